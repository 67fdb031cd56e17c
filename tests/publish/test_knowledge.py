from bezelbook.publish.knowledge import Knowledge


def test_what_there_is_to_publish_has_the_date_of_its_newest_note(worked: Knowledge) -> None:
    assert worked.today == "2026-03-05"
    assert worked.left_out == ()
    assert {rule.name for rule in worked.rules} >= {finding.rule for finding in worked.findings}
