// Sizes in free words, as the book's own reader takes them: which numbers are sizes, of what, and in which unit.
"use strict";

bezelbook.sizes = (() => {
  const WIDTH_FIRST = ["width", "height", "depth"];
  const MM = 1000000;

  class Unreadable extends Error {}

  // { sizes, took, rivals, bare, text }: `rivals` are numbers of which any one may be the depth, `bare` the numbers that
  // were typed without a unit, each with the unit it was read in, `text` the words that were taken for sizes.
  function said(left, besideUnit) {
    const { noSizes } = bezelbook.told.reading;
    const all = [...groups(left.map((word) => word || "|").join(" ").replace(new RegExp(noSizes, "g"), "|"))];
    const found = { sizes: {}, took: [], rivals: [], bare: [], words: new Set(), text: all.map(({ text }) => text).join(" ") };
    for (const one of all) if (one.labelled) take(found, one);
    const bare = all.filter(({ labelled }) => !labelled);
    const openDepth = !besideUnit && !found.sizes.depth;
    const readable = [...new Set(bare.filter(isReadable).map(({ words }) => words))];
    if (openDepth && readable.length > 1) return { ...found, rivals: readable };
    for (const one of bare) (openDepth ? take : leave)(found, one);
    return { ...found, took: [...new Set(found.took)] };
  }

  // The same with the width and the height of a box that was named by how high it is, where neither was said.
  function asSold(found, left) {
    const text = left.map((word) => word || "|").join(" ");
    const boxes = bezelbook.told.reading.boxes.map(([pattern, ...sizes]) => [new RegExp(pattern).exec(text), sizes]);
    const named = boxes.filter(([match]) => match);
    if (named.length !== 1 || found.sizes.width || found.sizes.height) return found;
    const [[[words], [across, up]]] = named;
    const box = { width: bezelbook.lengths.read(across), height: bezelbook.lengths.read(up) };
    const told = `${words} read as ${across} x ${up}, which such a box measures`;
    return { ...found, sizes: { ...box, ...found.sizes }, took: [...found.took, told], text: `${found.text} ${words}` };
  }

  function* groups(text) {
    const { sizes, needs } = bezelbook.told.reading;
    for (const [whole, before, labelled, ...rest] of text.matchAll(new RegExp(sizes, "g"))) {
      const [one, two, three, behind] = rest;
      const parts = [labelled, one, two, three].filter(Boolean).map((part) => part.trim());
      const word = before || behind;
      const named = parts.length > 1 ? WIDTH_FIRST : [needs[word] || "depth"];
      const labelledByWord = parts.length > 1 || Boolean(word);
      const pairs = parts.map((part, number) => [named[number], part]);
      yield { parts: pairs, labelled: labelledByWord, words: parts.join(" x "), text: whole };
    }
  }

  // Sizes that can be read and are not said already; any others are told.
  function take(found, one) {
    const read = isReadable(one) ? quantities(one.parts) : null;
    if (!read || Object.entries(read.sizes).some(([need, size]) => found.sizes[need] && !same(found.sizes[need], size))) {
      leave(found, one);
      return;
    }
    Object.assign(found.sizes, read.sizes);
    found.took.push(...read.took);
    if (read.unit) found.bare.push({ parts: read.parts, unit: read.unit, others: read.others });
    found.words.add(one.words);
  }

  function leave(found, { words }) {
    if (!found.words.has(words)) found.took.push(notRead(words));
  }

  // That words were not taken for a size, and why where they are finer than any size is kept.
  function notRead(words) {
    const [pattern, why] = bezelbook.told.reading.tooFine;
    return `${words} was not read as a size${new RegExp(pattern).test(words) ? why : ""}`;
  }

  function same(one, other) {
    return one.base === other.base && one.give === other.give && one.typed === other.typed;
  }

  function isReadable({ parts }) {
    try {
      quantities(parts);
      return true;
    } catch (fault) {
      if (fault instanceof Unreadable) return false;
      throw fault;
    }
  }

  // Sizes typed together share the last unit typed; without any unit they are read by the usual limits of a chassis.
  function quantities(parts) {
    const { unit, bare: units } = bezelbook.told.reading;
    const typed = parts.flatMap(([, part]) => part.match(new RegExp(unit, "g")) || []);
    const bare = parts.map(([need, part]) => [need, part.replace(new RegExp(` ?${unit}`, "g"), "")]);
    const onlyAWord = typed.length > 0 && typed.every((one) => one === "in") && !isUsual(parts, "in") && isUsual(bare, "mm");
    if (typed.length && !onlyAWord) return { sizes: lengths(parts, typed[typed.length - 1]), took: [], unit: null };
    const usual = units.filter((one) => isUsual(bare, one));
    const taken = usual[0] || "mm";
    const words = bare.map(([, part]) => part).join(" x ");
    const others = usual.slice(1).map((one) => `; ${one} would be ${words} ${one}`).join("");
    return {
      sizes: lengths(bare, taken), took: [`${words} read as ${taken}${others}`], parts: bare, unit: taken,
      others: [...new Set([...usual.slice(1), taken === "mm" ? "in" : "mm"])],
    };
  }

  function lengths(parts, unit) {
    return Object.fromEntries(parts.map(([need, part]) => {
      const length = bezelbook.lengths.read(new RegExp(bezelbook.told.reading.unit).test(part) ? part : `${part} ${unit}`);
      if (!length || length.base === 0) throw new Unreadable(part);
      return [need, length];
    }));
  }

  function isUsual(parts, unit) {
    const { usual } = bezelbook.told.reading;
    return Object.entries(lengths(parts, unit)).every(([need, { base }]) => usual[need][0] * MM <= base && base <= usual[need][1] * MM);
  }

  return { said, asSold, notRead };
})();
