// Sizes of a speaker in free words, as the book's own reader takes them: a depth, a hole, a bolt circle, or a size class.
"use strict";

bezelbook.spokenSizes = (() => {
  const TWO_WAYS = ["cut_out", "basket", "flange"];
  const MM = 1000000;

  // { sizes, sizeClass, took, rival, adds, text }: `adds` gives for each telling the words that would say another reading.
  function said(text, besideSpeaker) {
    const all = groups(text.replace(new RegExp(bezelbook.told.reading.noSizes, "g"), "|"));
    const found = { sizes: {}, sizeClass: null, took: [], rival: null, adds: new Map(), text: all.map((one) => one.text).join(" ") };
    for (const one of all) if (one.of) read(found, one, one.of);
    const plain = all.filter(({ of }) => of).map(({ bare }) => bare);
    for (const one of all) if (!one.of && !plain.includes(one.bare)) guess(found, one, besideSpeaker);
    return { ...found, took: [...new Set(found.took)] };
  }

  function groups(text) {
    const { said: pattern, labels } = bezelbook.told.reading.spoken;
    return [...text.matchAll(new RegExp(pattern, "g"))].map(([whole, label, labelled, first, second, behind]) => {
      const parts = [labelled || first, second].filter(Boolean).map((part) => part.trim());
      const word = label || behind;
      return { parts, words: parts.join(" x "), bare: parts.map(bareOf).join(" x "), of: word ? labels[word] : null, text: whole };
    });
  }

  // A number that nothing says what it is of.
  function guess(found, one, besideSpeaker) {
    const { deepest } = bezelbook.told.reading.spoken;
    const words = one.words.replaceAll(" x ", "x");
    const soldAs = sizeClass(words) || sizeClass(words.replace(/ in$/, ""));
    if (besideSpeaker) {
      if (!soldAs) found.took.push(notRead(one.words));
    } else if (soldAs && (found.sizeClass || soldAs) === soldAs) classed(found, one, soldAs);
    else if (one.parts.length > 1) read(found, one, "cut_out", " across, the hole it needs");
    else if (found.sizes.mounting_depth || found.rival) found.took.push(notRead(one.words));
    else {
      const deep = taken(one.parts, "mounting_depth");
      if (deep && deep.sizes[0].base > deepest && !found.sizes.cut_out) found.rival = one.words;
      else read(found, one, "mounting_depth", " deep", `the hole it needs would be cut-out ${one.words}`, `cut out ${one.words}`);
    }
  }

  function classed(found, one, soldAs) {
    if (!found.sizeClass) {
      const deep = one.parts.length === 1 ? taken(one.parts, "mounting_depth") : null;
      const other = deep && isWithin(deep.sizes[0], "mounting_depth") ? `${one.words} deep` : "";
      tell(found, `${one.words} read as the ${soldAs} size${other ? `; deep would be ${other}` : ""}`, other ? [other] : []);
    }
    found.sizeClass = soldAs;
  }

  // Take sizes that can be read and are not said already; tell of any others.
  function read(found, one, of, told = "", other = "", otherWords = "") {
    const ways = [of, `${of}_short`].slice(0, one.parts.length);
    const got = taken(one.parts, of);
    if (!got || ways.some((way) => found.sizes[way]) || (one.parts.length > 1 && !TWO_WAYS.includes(of))) {
      found.took.push(notRead(one.words));
      return;
    }
    [...got.sizes].sort((size, smaller) => smaller.base - size.base).forEach((size, number) => { found.sizes[ways[number]] = size; });
    if (!got.unit && !told) return;
    const { labels } = bezelbook.told.reading.spoken;
    const word = Object.keys(labels).find((one_) => labels[one_] === of);
    const others = got.others.map((unit) => `${unit} would be ${one.bare} ${unit} ${word}`);
    const first = `${one.words} read as ${got.unit}${told}`.replace("as  ", "as ");
    const adds = [...got.others.map((unit) => `${one.bare} ${unit} ${word}`), ...(otherWords ? [otherWords] : [])];
    tell(found, [first, ...others, ...(other ? [other] : [])].join("; "), adds);
  }

  function tell(found, words, adds) {
    found.took.push(words);
    found.adds.set(words, adds);
  }

  // Sizes typed together share the last unit typed; without any they are read by the usual limits. Null if neither.
  function taken(parts, of) {
    const { unit, bare: known } = bezelbook.told.reading;
    const units = parts.flatMap((part) => part.match(new RegExp(unit, "g")) || []);
    const bare = parts.map(bareOf);
    const onlyAWord = units.length > 0 && units.every((one) => one === "in") && !isUsual(bare, of, "in") && isUsual(bare, of, "mm");
    if (units.length && !onlyAWord) {
      const sizes = lengths(parts.map((part) => (new RegExp(unit).test(part) ? part : `${part} ${units[units.length - 1]}`)));
      return sizes && { sizes, unit: "", others: [] };
    }
    const usual = known.filter((one) => isUsual(bare, of, one));
    const sizes = lengths(bare.map((part) => `${part} ${usual[0] || "mm"}`));
    return sizes && { sizes, unit: usual[0] || "mm", others: usual.slice(1) };
  }

  function lengths(parts) {
    const sizes = parts.map((part) => bezelbook.lengths.read(part));
    return sizes.every((size) => size && size.base) ? sizes : null;
  }

  function isUsual(bare, of, unit) {
    const sizes = bare.map((part) => bezelbook.lengths.read(`${part} ${unit}`));
    return sizes.every((size) => size && isWithin(size, of));
  }

  function isWithin({ base }, of) {
    const [low, high] = bezelbook.told.reading.spoken.usual[of];
    return low * MM <= base && base <= high * MM;
  }

  function bareOf(part) {
    return part.replace(new RegExp(` ?${bezelbook.told.reading.unit}`, "g"), "");
  }

  function sizeClass(words) {
    const found = bezelbook.told.reading.spoken.classes.find(([, pattern]) => new RegExp(`^(?:${pattern})$`).test(words));
    return found ? found[0] : null;
  }

  function notRead(words) {
    return bezelbook.sizes.notRead(words);
  }

  return { said };
})();
