// Shop words read as a question, as the book's own reader reads them; what is missing is asked for, never guessed.
"use strict";

bezelbook.words = (() => {
  const WIDTH_FIRST = ["width", "height", "depth"];
  // One word in common is chance: "double" is in many names.
  const LEAST_SHARED = 1;

  // Lower case, generations said one way, nothing but words and sizes.
  function fold(text) {
    const { same } = bezelbook.told.reading;
    const folded = same.reduce((said, [pattern, instead]) => said.replace(new RegExp(pattern, "g"), instead), text.toLowerCase());
    return folded.split(" ").filter(Boolean);
  }

  // { question } or { choice: { about, ask, options } }; `took` tells how numbers were read, `left` what named nothing.
  function read(text) {
    const words = fold(text);
    const found = { words, left: [...words], hits: [], used: new Set(), sized: { took: [], bare: [], text: "" } };
    const { phrases } = bezelbook.told;
    take(found, phrases.filter(({ points }) => ["vehicle", "unit", "mount", "speaker"].includes(points)));
    const likely = vehiclesOf(found);
    if (likely.length !== 1) return answered(found, null, whichVehicle(likely));
    const [vehicle] = likely;
    take(found, phrases.filter(({ of }) => of === vehicle.id));
    if (asksForWiring(found)) return { ...answered(found, null, null), wiring: vehicle };
    if (bezelbook.spoken.means(found, vehicle, named)) return spokenOf(found, vehicle);
    const place = placeOf(found, vehicle);
    const units = named(found, "unit");
    found.sized = bezelbook.sizes.said(found.left, units.length > 0);
    if (!units.length) found.sized = bezelbook.sizes.asSold(found.sized, found.left);
    const choice = place.choice || whichMount(found) || whichThing(found, units);
    if (choice && !choice.open) return answered(found, null, choice);
    const year = yearOf(found, vehicle);
    const question = {
      vehicle: vehicle.id, place: place.id, splits: splitsOf(found, vehicle), year: year.said,
      mounts: mountsOf(found), unit: units[0] || null, sizes: found.sized.sizes,
    };
    return choice ? answered(found, null, { ...choice, opening: question }) : answered(found, question, null, year.untold);
  }

  // Whether the words ask which pieces a job takes, and not whether a size fits.
  function asksForWiring(found) {
    const { words, phrases } = bezelbook.told.reading.wiring;
    const line = ` ${found.words.join(" ")} `;
    const asked = found.left.some((word) => words.includes(word)) || phrases.some((phrase) => line.includes(` ${phrase.join(" ")} `));
    return asked && !Object.keys(bezelbook.sizes.said([...found.left], named(found, "unit").length > 0).sizes).length;
  }

  // What was asked of a place for a speaker.
  function spokenOf(found, vehicle) {
    bezelbook.spoken.giveBack(found);
    const year = yearOf(found, vehicle);
    const asked = { named, mountHits: mountHits(found), splits: splitsOf(found, vehicle), year: year.said };
    const { question = null, choice = null, took, adds } = bezelbook.spoken.read(found, vehicle, asked);
    return { question, choice, took: [...took, ...(year.untold || [])], bare: [], adds, left: [] };
  }

  function answered(found, question, choice, untold = []) {
    const { took, bare, text } = found.sized;
    const used = [...found.used, ...text.split(" ")];
    const left = found.left.filter((word) => word && tells(word) && !used.includes(word));
    return { question, choice, took: [...took, ...untold], bare, left };
  }

  // Recognise phrases, the longest first and then from the left, each word once.
  function take(found, phrases) {
    const meanings = new Map();
    for (const phrase of phrases) meanings.set(phrase.words, [...(meanings.get(phrase.words) || []), phrase]);
    const sizes = [...new Set([...meanings.keys()].map((words) => words.split(" ").length))].sort((one, other) => other - one);
    for (const size of sizes) {
      for (let start = 0; start + size <= found.left.length; start += 1) {
        const words = found.left.slice(start, start + size);
        const meant = !words.includes(null) && meanings.get(words.join(" "));
        if (meant) {
          found.left.fill(null, start, start + size);
          found.hits.push({ start, meant });
        }
      }
    }
  }

  function inOrder(found) {
    return [...found.hits].sort((one, other) => one.start - other.start);
  }

  // What was named, and named most often when that differs: several when the words leave it open. Words that may speak
  // of several axes speak of none.
  function named(found, points, among = null, axis = "") {
    const said = new Map();
    for (const { meant } of inOrder(found)) {
      if (new Set(meant.map((one) => one.axis)).size > 1) continue;
      for (const one of meant) {
        if (one.points === points && one.axis === axis && (!among || among.includes(one.id))) said.set(one.id, (said.get(one.id) || 0) + 1);
      }
    }
    const most = Math.max(...said.values());
    return [...said.keys()].filter((id) => said.get(id) === most);
  }

  // What is named by a phrase that shares an unused word; words that tell nothing do not count.
  function sharing(found, phrases) {
    const words = found.left.filter((word) => word && tells(word));
    const shares = phrases.filter((phrase) => phrase.words.split(" ").some((word) => words.includes(word)));
    for (const phrase of shares) phrase.words.split(" ").forEach((word) => found.used.add(word));
    return [...new Set(shares.map(({ id }) => id))];
  }

  // What is named by the phrases that share most unused words that tell something, and two of them at least.
  function nearest(found, phrases) {
    const words = new Set(found.left.filter((word) => word && tells(word)));
    const shared = new Map();
    for (const { id, words: its } of phrases) {
      const number = new Set(its.split(" ").filter((word) => words.has(word))).size;
      shared.set(id, Math.max(number, shared.get(id) ?? LEAST_SHARED));
    }
    const most = Math.max(LEAST_SHARED, ...shared.values());
    const ids = [...shared.keys()].filter((id) => shared.get(id) === most && most > LEAST_SHARED);
    for (const { id, words: its } of phrases) if (ids.includes(id)) its.split(" ").forEach((word) => found.used.add(word));
    return ids;
  }

  function tells(word) {
    return /^[a-z]/.test(word) && !bezelbook.told.reading.fillers.includes(word);
  }

  // The vehicles that were named, or else share a word, unless another generation was said.
  function vehiclesOf(found) {
    const { phrases, vehicles } = bezelbook.told;
    const ofVehicles = phrases.filter(({ points }) => points === "vehicle");
    const ids = named(found, "vehicle");
    const likely = (ids.length ? ids : sharing(found, ofVehicles)).map((id) => vehicles.find((one) => one.id === id));
    const names = new Set(ofVehicles.flatMap(({ words }) => words.split(" ").filter(tells)));
    const said = generations(found, names, likely.map(({ generation }) => generation));
    return said.size && !isNumbered(found) ? likely.filter(({ generation }) => said.has(generation)) : likely;
  }

  // Whether a vehicle was named by words that hold a number, which is its generation.
  function isNumbered(found) {
    const meant = found.hits.flatMap((hit) => hit.meant).filter(({ points }) => points === "vehicle");
    return meant.some(({ words }) => words.split(" ").some((word) => /^[0-9]+$/.test(word)));
  }

  // The generations said, as in "gen 2" and "hatch 2"; they are taken out of the words, for they are no sizes.
  function generations(found, names, likely) {
    const said = new Set();
    const goesOn = new RegExp(`^(?:${bezelbook.told.reading.sizeGoesOn})$`);
    found.words.forEach((word, at) => {
      if (found.left[at] === null || !/^[0-9]{1,2}$/.test(word)) return;
      const number = Number(word);
      const [before, after] = [found.words[at - 1] || "", found.words[at + 1] || ""];
      const sized = goesOn.test(after) && !(after === "in" && likely.includes(number));
      if (before === "gen" || (names.has(before) && !sized && (number < 10 || likely.includes(number)))) {
        found.left[at] = null;
        said.add(number);
      }
    });
    return said;
  }

  // The opening that was named, or the only one there is, or the only one that shares a typed word; else the choice.
  function placeOf(found, vehicle) {
    const openings = vehicle.places.filter(({ opening }) => opening);
    const ids = openings.map(({ id }) => id);
    const elsewhere = named(found, "place");
    let said = named(found, "place", ids);
    if (!said.length && !elsewhere.length) {
      const places = bezelbook.told.phrases.filter(({ points, of }) => points === "place" && of === vehicle.id);
      said = ids.length === 1 ? ids : sharing(found, places).filter((id) => ids.includes(id));
    }
    if (said.length === 1) return { id: said[0] };
    const other = elsewhere.length && !said.length ? vehicle.places.find(({ id }) => id === elsewhere[0]).name : "";
    const ask = other ? `${other} is no opening that takes a box. Which place?` : "Which place?";
    return { choice: { about: "place", ask, options: openings.map(({ id, name }) => [name, spoken(id)]) } };
  }

  function mountHits(found) {
    return inOrder(found).map(({ meant }) => meant.filter(({ points }) => points === "mount").map(({ id }) => id)).map((among) => (
      among.length ? named(found, "mount", among) : []
    ));
  }

  // A name that two mounts share has to be made plain.
  function whichMount(found) {
    const shared = mountHits(found).find((ids) => ids.length > 1);
    const nameOf = (id) => bezelbook.told.mounts.find((one) => one.id === id).name;
    return shared ? { about: "mount", ask: "Which mount?", options: shared.map((id) => [nameOf(id), spoken(id)]) } : null;
  }

  function mountsOf(found) {
    const said = [...new Set(mountHits(found).flat())];
    return said.length ? said : null;
  }

  // What was said of the build; an axis of which two values were said is not known.
  function splitsOf(found, { axes }) {
    const said = axes.map((axis) => [axis, named(found, "split", null, axis)]);
    return Object.fromEntries(said.filter(([, values]) => values.length === 1).map(([axis, values]) => [axis, values[0]]));
  }

  function yearOf(found, { name, years }) {
    const said = new RegExp(bezelbook.told.reading.year).exec(found.left.map((word) => word || "|").join(" "));
    if (said) found.used.add("year");
    if (!said || (Number(said[1]) >= 1 && Number(said[1]) <= years)) return { said: said ? Number(said[1]) : null };
    return { said: null, untold: [`year ${said[1]} was left out: the ${name} ran ${years} model years`] };
  }

  function whichVehicle(likely) {
    const vehicles = likely.length ? likely : bezelbook.told.vehicles;
    const ask = vehicles.length ? "Which vehicle?" : `${bezelbook.told.reading.noVehicle} Which vehicle will be the first?`;
    return { about: "vehicle", ask, options: vehicles.map(({ id, name }) => [name, spoken(id)]) };
  }

  // Null when what is asked about is plain: one thing, or sizes with a depth among them.
  function whichThing(found, units) {
    const { sized } = found;
    if (units.length <= 1 && !sized.rivals.length && (units.length || sized.sizes.depth)) return null;
    const rivals = sized.rivals.map((size) => [size, `${size} deep`]);
    if (rivals.length) return { about: "depth", ask: "Which of these is its depth?", options: rivals };
    const optionsOf = (ids) => ids.map((id) => [bezelbook.told.units.find((one) => one.id === id).name, spoken(id)]);
    if (Object.keys(sized.sizes).length && !units.length) {
      const near = nearest(found, bezelbook.told.phrases.filter(({ points }) => points === "unit"));
      return { about: "depth", ask: "How deep is it?", options: optionsOf(near), open: true };
    }
    if (units.length) return { about: "thing", ask: "Which one?", options: optionsOf(units) };
    return { about: "thing", ask: "Which one, or how deep is it?", options: optionsOf(bezelbook.told.units.map(({ id }) => id)) };
  }

  function spoken(id) {
    return id.replaceAll("-", " ");
  }

  // The words that ask a question again, in full; they read as the same question.
  function again(question) {
    if (Object.hasOwn(question, "speaker")) return bezelbook.spoken.again(question);
    const { vehicle, place, splits, year, mounts, unit, sizes } = question;
    const typed = WIDTH_FIRST.filter((need) => sizes[need]);
    const plain = typed.length === 3 || (typed.length === 1 && sizes.depth && !unit);
    const size = plain ? typed.map((need) => sizes[need].typed).join(" x ") : typed.map((need) => `${need} ${sizes[need].typed}`).join(" ");
    const said = [vehicle, place, ...Object.values(splits), year ? `year ${year}` : "", ...(mounts || []), unit || "", size];
    return said.filter(Boolean).map(spoken).join(" ");
  }

  return { fold, read, again };
})();
