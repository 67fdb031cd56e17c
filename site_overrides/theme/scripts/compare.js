// A typed size against the room that the notes leave: the verdict, the number that decides, and on what condition.
"use strict";

bezelbook.compare = (() => {
  const NOTHING = [0, 0];

  // `needs` gives for width, height and depth the least and the most that is asked, in nanometres; a size that nobody
  // typed asks for nothing. `settings` are the numbers of the settings that the question leaves open.
  function compare({ accounts }, settings, needs, first) {
    const rooms = accounts.map((account) => settings.map((number) => account.settings[number]));
    const spots = rooms.flatMap((account) => account.flatMap(({ cells }) => cells.map((cell) => spotOf(cell, needs))));
    const condition = needs.depth && met(spots) ? plugCondition(rooms.flat(), needs.depth, first) : null;
    const verdict = verdictOf(rooms, needs, condition);
    return { verdict, condition, number: deciding(spots.filter(({ cell }) => needs[cell.need]), verdict, first) };
  }

  // The settings whose mounts can take a thing of these sizes at all; all of them when none can.
  function viable({ accounts }, settings, needs) {
    const able = new Set();
    for (const account of accounts) {
      for (const number of settings) {
        const { stack, leaves, cells } = account.settings[number];
        if (takes(leaves, needs, cells)) able.add(stack);
      }
    }
    return able.size ? settings.filter((number) => able.has(accounts[0].settings[number].stack)) : settings;
  }

  function spotOf(cell, needs) {
    const [low, high] = needs[cell.need] || NOTHING;
    return { cell, low, high, worst: cell.least - high, best: cell.most === null ? null : cell.most - low };
  }

  function verdictOf(rooms, needs, condition) {
    const never = rooms.map((account) => !account.some((room) => takes(room.leaves, needs, room.cells)));
    if (never.every(Boolean)) return "does not";
    if (never.some(Boolean)) return "argued over";
    if (condition) return "goes in if";
    return rooms.flat().some((room) => close(room, needs)) ? "too close" : "nobody has tried";
  }

  // Whether some room that the notes allow takes a thing of these sizes.
  function takes(leaves, needs, cells) {
    return leaves.some((noes) => !noes.some((no) => breaks(no, needs, cells)));
  }

  function breaks(no, needs, cells) {
    return Object.entries(no).every(([number, threshold]) => (needs[cells[number].need] || NOTHING)[0] >= threshold);
  }

  // Whether everything that was typed is certainly met.
  function met(spots) {
    return spots.every(({ cell, high }) => high <= cell.sure);
  }

  // The plug is never typed, so a body that certainly goes in does so if what is left behind it is enough.
  function plugCondition(rooms, depth, first) {
    const left = new Map();
    for (const { need, ninth, least, clearance } of rooms.flatMap(({ cells }) => cells)) {
      if (need === "depth") left.set(ninth, Math.min(least - depth[1] - clearance, left.get(ninth) ?? Infinity));
    }
    const [tightest, roomiest] = [Math.min(...left.values()), Math.max(...left.values())];
    const tight = [...left.keys()].filter((ninth) => left.get(ninth) === tightest);
    const unless = roomiest > tightest ? ` (up to ${show(roomiest)} if it does not leave at the ${listed(tight)})` : "";
    return `its plug and bend need no more than ${show(tightest)}${unless}`;
  }

  // Whether nothing rules it out and some size that was typed was measured too near to call.
  function close({ cells, leaves }, needs) {
    if (!takes(leaves, needs, cells)) return false;
    return cells.some(({ need, measured, clearance, least, most }) => {
      if (!measured || !needs[need]) return false;
      const [low, high] = needs[need];
      return high + clearance > least && (most === null || low <= most);
    });
  }

  // The spot furthest short for a no, otherwise the tightest one that was bounded.
  function deciding(spots, verdict, first) {
    const no = verdict === "does not";
    const kept = no ? spots.filter(({ best }) => best !== null && best <= 0)
      : spots.filter(({ cell }) => cell.least > 0 && (verdict !== "too close" || cell.most !== null));
    const gap = no ? "best" : "worst";
    const spot = kept.reduce((found, one) => (found === null || one[gap] < found[gap] ? one : found), null);
    return spot && numberOf(spot, first);
  }

  function numberOf({ cell, low, high }, first) {
    const { showSpan, show: shown } = bezelbook.lengths;
    const [asks, room] = [showSpan(low, high, first), roomWords(cell, first)];
    const spare = cell.most === null ? null : shown(Math.floor((cell.least + cell.most - low - high) / 2), first);
    const where = cell.ninth ? ` at the ${cell.ninth}` : "";
    return { need: cell.need, where: cell.ninth, asks, room, to_spare: spare, words: `${cell.need}: it asks ${asks}${where}; ${room}` };
  }

  function roomWords({ least, most }, first) {
    const { show: shown, showSpan } = bezelbook.lengths;
    if (most === null) return `at least ${shown(least, first)} is known to be there`;
    return least === 0 ? `less than ${shown(most, first)} is there` : `there is ${showSpan(least, most, first)}`;
  }

  function show(nm) {
    return bezelbook.lengths.show(nm, "mm");
  }

  function listed(words, joined = "and") {
    return words.length === 1 ? words[0] : `${words.slice(0, -1).join(", ")} ${joined} ${words[words.length - 1]}`;
  }

  return { compare, takes, viable, listed };
})();
