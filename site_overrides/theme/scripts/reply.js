// The answer to a question, as plain data with the keys that the command line prints: looked up, or compared.
"use strict";

bezelbook.reply = (() => {
  const CARRIES = "carries the answer";
  const NINTHS = ["upper-left", "upper", "upper-right", "left", "centre", "right", "lower-left", "lower", "lower-right"];

  // { answer } with what the page adds to it, or { cannot } when this page has no answer to that.
  function reply(vehicle, question) {
    const found = alone(vehicle, question);
    if (found.cannot) return found;
    const { told, known, answer } = found;
    const instead = told.instead ? told.instead.map((number) => vehicle.offers[number]) : bezelbook.instead(vehicle, question, known, answer.verdict);
    return { ...found, answer: { ...answer, instead } };
  }

  // The same without what to offer instead, which is made of such answers.
  function alone(vehicle, question) {
    if (!Object.hasOwn(vehicle.places, question.place)) return { cannot: "place" };
    const place = vehicle.places[question.place];
    const known = knownSplits(vehicle, place, question);
    const choice = place.choices[keyOf(place, known, question.mounts)];
    if (!choice) return { cannot: "mounts" };
    const typed = Object.keys(question.sizes).length > 0;
    if (typed && question.unit) return { cannot: "both" };
    const told = typed ? compared(vehicle, place, question, known, choice) : vehicle.answers[choice.units[question.unit]];
    return { answer: plain(vehicle, place, question, choice, told), added: added(told), told, known, place };
  }

  // What is known of the car: what was said, and what its model year implies where one value alone lists it.
  function knownSplits(vehicle, place, { splits, year }) {
    const known = {};
    for (const axis of place.axes) {
      const listing = Object.entries(vehicle.splits[axis]).filter(([, { years }]) => years.includes(year)).map(([value]) => value);
      if (Object.hasOwn(splits, axis)) known[axis] = splits[axis];
      else if (listing.length === 1) [known[axis]] = listing;
    }
    return known;
  }

  function keyOf(place, known, mounts) {
    const splits = place.axes.filter((axis) => Object.hasOwn(known, axis)).map((axis) => `${axis}=${known[axis]}`).join(",");
    return `${splits}|${mounts ? mounts.join("+") || "none" : ""}`;
  }

  function compared(vehicle, place, question, known, choice) {
    const needs = needsOf(question.sizes);
    const settings = bezelbook.compare.viable(place, choice.settings, needs);
    const mounts = [...new Set(settings.map((number) => place.accounts[0].settings[number].stack))].map((stack) => place.mounts[stack].key);
    const { typed } = mounts.length === 1 ? place.choices[keyOf(place, known, mounts[0])] : choice;
    const found = verdictOf(place, settings, needs);
    const firm = { "does not": "no", "goes in if": "yes" }[found.verdict];
    const behind = firm ? bezelbook.support.behind(place, settings, needs, vehicle.notes, firm) : { sure: null, witnesses: 0, notes: [] };
    const [plug, exit, ...unsaid] = typed.unknown.map((number) => missing(vehicle, number));
    return {
      verdict: found.verdict, number: found.number, mounts,
      conditions: found.condition ? [[found.condition, plug.look]] : [],
      until_settled: found.verdict === "argued over" ? "does not" : null,
      sure: behind.sure, witnesses: behind.witnesses,
      notes: [...behind.notes.map((note) => [note, CARRIES, "strong"]), ...typed.notes],
      argued: typed.argued, needs: typed.needs,
      missing: [...opens(place, typed, settings, needs), ...(needs.depth ? [plug, exit, ...blank(place, settings)] : []), ...unsaid],
    };
  }

  function opens(place, { open }, settings, needs) {
    return open.map(([, what, look, values]) => {
      const verdicts = values.map(([value, numbers]) => {
        const left = numbers.filter((one) => settings.includes(one));
        return `${value}: ${verdictOf(place, left, needs).verdict}`;
      });
      return { what, look, changes: verdicts.join("; ") };
    });
  }

  function blank(place, settings) {
    const ninths = NINTHS.filter((ninth) => settings.some((number) => place.blank[number].includes(ninth)));
    if (!ninths.length) return [];
    const what = ninths.length === NINTHS.length ? "the depth was never measured" : `depth not looked at: ${ninths.join(", ")}`;
    return [{ what, look: "depth gauge from the sub-dash face, 2 min with the hole open", changes: "how deep a thing may be" }];
  }

  function verdictOf(place, settings, needs) {
    return bezelbook.compare.compare(place, settings, needs, bezelbook.told.shop.first);
  }

  function needsOf(sizes) {
    const needs = {};
    for (const [need, { base, give }] of Object.entries(sizes)) needs[need] = [base - (give || 0), base + (give || 0)];
    return needs;
  }

  function plain(vehicle, place, question, choice, told) {
    const name = question.unit ? bezelbook.told.units.find(({ id }) => id === question.unit).name : typedName(question.sizes);
    const mounts = told.mounts.map((one) => place.mounts.find(({ key }) => key.join() === one.join()).words);
    const [before, after] = choice.typed.words;
    const note = ([id, why]) => {
      const { author, date, sure, words } = vehicle.notes[id];
      return { note: id, author, date, sure, words, why };
    };
    return {
      verdict: told.verdict, until_settled: told.until_settled,
      for: {
        vehicle: question.vehicle, place: question.place, splits: choice.typed.splits, mounts: told.mounts,
        cut: "nothing", loom: "aside", plugs: "on", what: question.unit || name,
        words: `${name}${before}${bezelbook.compare.listed(mounts, "or")}${after}`,
      },
      number: told.number, sure: told.sure, witnesses: told.witnesses,
      notes: told.notes.map(note), argued: told.argued.map(note),
      unknown: told.missing || told.unknown.map((number) => missing(vehicle, number)),
      needs: [...told.conditions.map(([words]) => words), ...told.needs],
    };
  }

  function missing(vehicle, number) {
    const [what, look, changes] = vehicle.missing[number];
    return { what, look, changes };
  }

  function typedName(sizes) {
    return ["width", "height", "depth"].filter((need) => sizes[need]).map((need) => sizes[need].typed).join(" x ");
  }

  // What a page shows beside the plain answer: how to find out about each condition, and how each note is shown.
  function added({ conditions, notes }) {
    return { looks: conditions.map(([, look]) => look), stands: notes.map(([, , stands]) => stands) };
  }

  // For each mount that takes its width and height, how deep a body certainly goes in, whatever the build.
  function depths(vehicle, question) {
    const place = vehicle.places[question.place];
    const choice = place.choices[keyOf(place, knownSplits(vehicle, place, question), question.mounts)];
    if (!choice) return [];
    const settings = bezelbook.compare.viable(place, choice.settings, needsOf(question.sizes));
    const stackOf = (number) => place.accounts[0].settings[number].stack;
    return [...new Set(settings.map(stackOf))].map((stack) => {
      const here = place.accounts.flatMap((account) => settings.filter((number) => stackOf(number) === stack).map((number) => account.settings[number]));
      const sure = Math.min(...here.flatMap(({ cells }) => cells.filter(({ need }) => need === "depth").map((cell) => cell.sure)));
      const deep = `up to ${bezelbook.lengths.show(sure, bezelbook.told.shop.first)} deep goes in, as far as its plug and bend have room`;
      return `with ${place.mounts[stack].words}: ${sure > 0 ? deep : "no depth is certain"}`;
    });
  }

  // The one thing of the car or the mount that is not known and changes the verdict; null when nothing does.
  function decider(vehicle, question) {
    const { answer, place, known } = alone(vehicle, question);
    for (const [axis, , , values] of place.choices[keyOf(place, known, question.mounts)].typed.open) {
      const found = differing(vehicle, values.map(([value]) => ({
        words: value, tell: vehicle.splits[axis][value].tell, question: { ...question, splits: { ...question.splits, [axis]: value } },
      })));
      if (found) return { ask: `Which ${axis}?`, options: found };
    }
    const mounts = answer.for.mounts.filter((key) => key.length && !question.mounts);
    const found = differing(vehicle, mounts.map((key) => ({
      words: place.mounts.find((one) => one.key.join() === key.join()).words, tell: "", question: { ...question, mounts: key },
    })));
    return found && { ask: "Which mount?", options: found };
  }

  function differing(vehicle, options) {
    const answered = options.map((option) => ({ ...option, verdict: alone(vehicle, option.question).answer.verdict }));
    return new Set(answered.map(({ verdict }) => verdict)).size > 1 ? answered : null;
  }

  return { reply, alone, keyOf, decider, depths };
})();
