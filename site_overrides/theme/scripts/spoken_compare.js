// A typed size of a speaker against the published corners of its place: up to where which answer holds, and what it says.
"use strict";

bezelbook.spokenCompare = (() => {
  // { answer, added } about one size; else { cannot } with what is known of each size that was typed.
  function reply(vehicle, question, key) {
    const place = vehicle.speakers.places[question.place];
    const typed = Object.entries(question.sizes);
    const each = typed.map(([of, size]) => [size, compared(vehicle, place, key, of, size)]);
    if (each.length === 1 && each[0][1]) return each[0][1];
    const known = each.filter(([, found]) => found).map(([{ typed: words }, { answer, added }]) => ({ words, answer, added }));
    return { cannot: "sizes", place, known };
  }

  function compared(vehicle, place, key, of, { base, give, typed }) {
    const pieces = Object.hasOwn(place.typed, key) && place.typed[key][of];
    const piece = pieces && give === null && pieces.find(([low, high]) => low <= base && base <= high);
    if (!piece) return null;
    const [low, , number, deciding, conditions] = piece;
    const { answer, added } = bezelbook.spokenReply.told(vehicle, vehicle.speakers.answers[number], typed, typed);
    const words = conditions.map(([template, lengths]) => filled(template, lengths, base - low));
    return {
      answer: { ...answer, number: deciding ? numberOf(deciding, base) : answer.number, needs: [...words, ...answer.needs] },
      added: { ...added, looks: conditions.map(([, , look]) => look) },
    };
  }

  // A condition with the lengths that go with the size.
  function filled(template, lengths, more) {
    return lengths.reduce((words, [length, slope]) => words.replace("{}", show(length + slope * more)), template);
  }

  function numberOf([need, where, room, bounded, left, house], base) {
    const asks = show(base);
    const said = `${need}: it asks ${asks} at ${where}; ${room}`;
    const spare = left - base;
    return { need, where, asks, room, to_spare: bounded ? show(spare) : null, words: bounded && house ? `${said}, ${leaves(spare, house)}` : said };
  }

  function leaves(spare, house) {
    return spare < 0 ? `so it is short by about ${show(-spare)}` : `so ${show(spare)} is left; the house wants ${house}`;
  }

  function show(nm) {
    return bezelbook.lengths.show(nm, bezelbook.told.shop.first);
  }

  return { reply };
})();
