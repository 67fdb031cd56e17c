// The answer to a question about a speaker, as plain data with the keys that the command line prints: looked up.
"use strict";

bezelbook.spokenReply = (() => {
  // { answer, added } or { cannot } when this page has no answer to that.
  function reply(vehicle, question) {
    const { places, answers } = vehicle.speakers;
    const place = places[question.place];
    const key = keyOf(vehicle, place, question);
    if (question.speaker && Object.keys(question.sizes).length) return { cannot: "both", place };
    if (!question.speaker) return bezelbook.spokenCompare.reply(vehicle, question, key);
    if (!Object.hasOwn(place.states, key)) return { cannot: "state", place };
    const number = bezelbook.told.speakers.findIndex(({ id }) => id === question.speaker);
    const { id, name } = bezelbook.told.speakers[number];
    return told(vehicle, answers[place.states[key][number]], id, name);
  }

  // The state as one word, as the book has it.
  function keyOf(vehicle, place, { splits, year, mounts, tabs, glass }) {
    const known = place.axes.map((axis) => [axis, valueOf(vehicle, axis, splits, year)]).filter(([, value]) => value);
    const said = known.map(([axis, value]) => `${axis}=${value}`).join(",");
    return `${said}|${mounts ? mounts.join("+") || "none" : ""}|${tabs || ""}|${glass === "up" ? "up" : ""}`;
  }

  // What was said of a split, or what the model year implies where one value alone lists it.
  function valueOf(vehicle, axis, splits, year) {
    if (Object.hasOwn(splits, axis)) return splits[axis];
    const listing = Object.entries(vehicle.splits[axis]).filter(([, { years }]) => years.includes(year));
    return listing.length === 1 ? listing[0][0] : null;
  }

  function told(vehicle, found, id, name) {
    const { fors } = vehicle.speakers;
    const [verdict, until, of, number, sure, witnesses, notes, argued, unknown, needs, looks] = found;
    const answer = {
      verdict, until_settled: until, for: { ...fors[of], what: id, words: `${name}${fors[of].words}` }, number, sure, witnesses,
      notes: notes.map((note) => noteOf(vehicle, note)), argued: argued.map((note) => noteOf(vehicle, note)),
      unknown: unknown.map((one) => missing(vehicle, one)), needs, instead: [],
    };
    return { answer, added: { looks, stands: notes.map(([, , stands]) => stands) } };
  }

  function noteOf(vehicle, [id, why]) {
    const { author, date, sure, words } = vehicle.notes[id];
    return { note: id, author, date, sure, words, why };
  }

  function missing(vehicle, number) {
    const [what, look, changes] = vehicle.missing[number];
    return { what, look, changes };
  }

  return { reply, told };
})();
