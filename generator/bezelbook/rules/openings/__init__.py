"""Openings in the dash: room, mounts, boxes that go in and boxes that do not."""
