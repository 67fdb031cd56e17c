// A question about a speaker in free words, as the book's own reader has it: where, which side, which one, how fitted.
"use strict";

bezelbook.spoken = (() => {
  const tables = () => bezelbook.told.reading.spoken;

  function replaced(text, patterns) {
    return patterns.reduce((said, [pattern, instead]) => said.replace(new RegExp(pattern, "g"), instead), text);
  }

  function shopWords(text) {
    return replaced(text, tables().shopWords).split(" ").filter(Boolean);
  }

  // The unused words with a bar where others were taken out; words that name a place may be put back.
  function textOf(found, withPlaces) {
    const words = [...found.left];
    for (const { start, meant } of withPlaces ? found.hits : []) {
      if (meant.some(({ points }) => points === "place")) {
        const { length } = meant[0].words.split(" ");
        words.splice(start, length, ...found.words.slice(start, start + length));
      }
    }
    return words.map((word) => word || "|").join(" ");
  }

  // Beside a place for a speaker, left is a side and no steering hand.
  function giveBack(found) {
    found.hits = found.hits.filter(({ start, meant }) => {
      const side = tables().sides.includes(found.words[start]) && !meant[0].words.includes(" ") && meant.every(({ points }) => points === "split");
      if (side) found.left[start] = found.words[start];
      return !side;
    });
  }

  // Whether the words are about a speaker and not about a box in an opening.
  function means(found, vehicle, named) {
    const { placeWords, speakerWords } = tables();
    const ids = (of) => vehicle.places.filter(of).map(({ id }) => id);
    const theirs = vehicle.places.filter(({ opening }) => opening).flatMap(({ own }) => own);
    const opening = named(found, "place", ids((place) => place.opening)).length > 0;
    const words = shopWords(textOf(found, true));
    const elsewhere = named(found, "place", ids((place) => place.speaker && !place.opening)).length > 0;
    const atSpeaker = elsewhere || words.some((word) => placeWords.includes(word) && !theirs.includes(word));
    const speakers = named(found, "speaker").length > 0;
    if (named(found, "unit").length) return speakers && atSpeaker && !opening;
    return speakers || words.some((word) => Object.hasOwn(speakerWords, word)) || (atSpeaker && !opening);
  }

  // { id } or { choice }.
  function placeOf(found, vehicle, named) {
    const places = vehicle.places.filter(({ speaker }) => speaker);
    const words = shopWords(textOf(found, true));
    const ids = named(found, "place", places.map(({ id }) => id));
    let likely = ids.length ? ids.map((id) => places.find((place) => place.id === id)) : likelyOf(places, words);
    if (!likely.length) return { choice: which(vehicle, places, nowhere(found, vehicle, named, words)) };
    const sides = mostNamed(words.filter((word) => tables().sides.includes(word)));
    if (likely.length > 1 && sides.length === 1) {
      const there = likely.filter(({ side }) => side === sides[0]);
      likely = there.length ? there : likely;
    }
    return likely.length === 1 ? { id: likely[0].id } : { choice: which(vehicle, likely, askOf(likely, words)) };
  }

  function likelyOf(places, words) {
    const { tellingWords, needlessWords } = tables();
    const known = new Set(places.flatMap(({ own }) => own));
    const telling = words.filter((word) => known.has(word) || (tellingWords.includes(word) && !needlessWords.includes(word)));
    return places.filter(({ own }) => telling.every((word) => own.includes(word)));
  }

  function nowhere(found, vehicle, named, words) {
    const named_ = named(found, "place");
    if (named_.length && !words.some((word) => tables().placeWords.includes(word))) {
      return `${vehicle.places.find(({ id }) => id === named_[0]).name} takes no speaker. Which place?`;
    }
    return `The book has no such place for a speaker in the ${vehicle.name}. Which place?`;
  }

  function askOf(likely, words) {
    const alike = new Set(likely.map(({ own }) => own.join(" ")));
    if (alike.size > 1 || new Set(likely.map(({ side }) => side)).size === 1) return "Which place?";
    if (!words.includes("seatside")) return "Which side?";
    return "Left or right, sitting in it and facing forward? The driver may sit on either. Which side?";
  }

  function which(vehicle, places, ask) {
    const at = ask.endsWith("side?") ? places.map(({ id }) => [vehicle.id, id]) : [];
    return { about: "place", ask, options: places.map(({ id, name }) => [name, spelled(id)]), at };
  }

  function mostNamed(words) {
    const times = (word) => words.filter((one) => one === word).length;
    const most = Math.max(...words.map(times));
    return [...new Set(words)].filter((word) => times(word) === most);
  }

  function spelled(id) {
    return id.replaceAll("-", " ");
  }

  // How it is fitted: { choice } or { mounts, tabs, glass, took }, and the text without what was said of rings.
  function fittingOf(mountHits, text) {
    const { fittingWords, ring } = tables();
    const said = replaced(text, fittingWords);
    const named = mountHits.filter((ids) => ids.length);
    const shared = named.find((ids) => ids.length > 1);
    if (shared) return { choice: whichMount(shared), text: said };
    const mounts = named.map(([id]) => id);
    const took = [];
    for (const [, before, behind] of said.matchAll(new RegExp(ring, "g"))) {
      const ids = ringsOf(before || behind);
      if (ids.length > 1) return { choice: whichMount(ids), text: said };
      mounts.push(...ids);
      took.push(ringTold(before || behind, ids));
    }
    const words = said.split(" ");
    const all = [...new Set(mounts)];
    return {
      mounts: all.length ? all : words.includes("nomount") ? [] : null,
      tabs: words.includes("tabsout") ? "out" : words.includes("tabsin") ? "in" : null,
      glass: words.includes("glassup") ? "up" : "run", took, text: said.replace(new RegExp(ring, "g"), " |"), plainly: said,
    };
  }

  function whichMount(ids) {
    return { about: "mount", ask: "Which mount?", options: ids.map((id) => [mountOf(id).name, spelled(id)]) };
  }

  function mountOf(id) {
    return bezelbook.told.mounts.find((one) => one.id === id);
  }

  // The plain rings of a thickness: those that measure just that, else those that come nearest to it.
  function ringsOf(typed) {
    const thick = thickness(typed);
    if (thick === null) return [];
    const rings = bezelbook.told.mounts.filter(({ ring }) => ring).map(({ id, ring }) => [id, Math.abs(ring[0] - thick)]);
    const nearest = Math.min(tables().near, ...rings.map(([, off]) => off));
    return nearest < tables().near ? rings.filter(([, off]) => off === nearest).map(([id]) => id) : [];
  }

  function thickness(typed) {
    const { read } = bezelbook.lengths;
    if (new RegExp(bezelbook.told.reading.unit).test(typed)) return base(read(typed));
    const mm = read(`${typed} mm`);
    if (!mm) return null;
    return mm.base >= tables().leastRing ? mm.base : base(read(`${typed} in`));
  }

  function base(length) {
    return length ? length.base : null;
  }

  function ringTold(typed, ids) {
    if (!ids.length) return `the book has no ring of ${typed}, so that it was left out`;
    const { name, ring } = mountOf(ids[0]);
    return `a ring of ${typed} read as ${name}, ${ring[1]}`;
  }

  // { question } or { choice }, with how numbers were taken.
  function read(found, vehicle, { named, mountHits, splits, year }) {
    const place = placeOf(found, vehicle, named);
    const speakers = named(found, "speaker");
    const fitting = fittingOf(mountHits, textOf(found, false));
    const { numberWords, labelWords } = tables();
    const sized = bezelbook.spokenSizes.said(replaced(replaced(fitting.text, numberWords), labelWords), speakers.length > 0);
    const told = { took: sized.took, adds: sized.adds };
    if (fitting.choice) return { ...told, choice: fitting.choice };
    told.took = [...told.took, ...fitting.took];
    const question = {
      vehicle: vehicle.id, place: place.id || "", splits, year, mounts: fitting.mounts, tabs: fitting.tabs, glass: fitting.glass,
      speaker: speakers[0] || null, sizes: sized.sizes,
    };
    const plain = speakers.length === 1 || (!speakers.length && isSized(sized));
    if (place.choice) return { ...told, choice: plain && place.choice.at.length ? { ...place.choice, question } : place.choice };
    return plain ? { ...told, question } : { ...told, choice: whichSpeaker([vehicle.id, place.id], speakers, sized, found) };
  }

  function isSized({ sizes, rival }) {
    return tables().enough.some((of) => sizes[of]) && !rival;
  }

  function whichSpeaker(at, ids, { rival, sizeClass }, found) {
    if (rival) {
      const ways = [[`${rival} deep`, `${rival} deep`], [`a hole of ${rival}`, `cut out ${rival}`]];
      return { about: "size", ask: `Is ${rival} its depth, or the hole it needs?`, options: ways, at: [at] };
    }
    const { speakers } = bezelbook.told;
    if (ids.length) return ofSpeakers("Which one?", ids.map((id) => speakers.find((one) => one.id === id)), at);
    const kinds = shopWords(textOf(found, false)).flatMap((word) => (Object.hasOwn(tables().speakerWords, word) ? tables().speakerWords[word] : []));
    const ofKind = speakers.filter(({ kind }) => !kinds.length || kinds.includes(kind));
    if (!sizeClass) return ofSpeakers("Which speaker, or how deep is it?", ofKind.length ? ofKind : speakers, at);
    const sold = ofKind.filter(({ soldAs }) => soldAs === sizeClass);
    if (sold.length) return ofSpeakers(`No two ${sizeClass} speakers need be alike. Which one, or how deep is it?`, sold, at);
    return ofSpeakers(`The book has no ${sizeClass} speaker of that sort. How deep is it, or which other one?`, ofKind, at);
  }

  function ofSpeakers(ask, speakers, at) {
    return { about: "speaker", ask, options: speakers.map(({ id, name }) => [name, spelled(id)]), at: [at] };
  }

  // The words that ask a question again, in full.
  function again({ vehicle, place, splits, year, mounts, tabs, glass, speaker, sizes }) {
    const { labels } = tables();
    const label = (of) => Object.keys(labels).find((word) => labels[word] === of);
    const typed = Object.entries(sizes).filter(([of]) => label(of)).map(([of, { typed: size }]) => {
      const short = sizes[`${of}_short`];
      return `${size}${short ? ` x ${short.typed}` : ""} ${label(of)}`;
    });
    const state = [tabs ? `tabs ${tabs}` : "", glass === "up" ? "glass up" : "", mounts && !mounts.length ? "no ring" : ""];
    const said = [vehicle, place, ...Object.values(splits), year ? `year ${year}` : "", ...(mounts || []), ...state, speaker || "speakers", ...typed];
    return said.filter(Boolean).map(spelled).join(" ");
  }

  return { means, giveBack, read, again };
})();
