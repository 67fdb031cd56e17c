// Lengths, exactly: read as the book's own reader reads them, shown as its pages show them. All in whole nanometres.
"use strict";

bezelbook.lengths = (() => {
  const MM = 1000000;
  const INCH = 25400000;
  const UNITS = [[/^(?:mm|milli)/, MM], [/^(?:cm|centi)/, 10 * MM], [/^(?:in|")/, INCH]];
  const SIGNS = { "½": [1, 2], "¼": [1, 4], "¾": [3, 4], "⅛": [1, 8], "⅜": [3, 8], "⅝": [5, 8], "⅞": [7, 8] };

  // { base, give, typed }, or null when the book would refuse it. Whether it would is the book's own pattern's business.
  function read(typed) {
    const { length } = bezelbook.told.reading;
    if (!new RegExp(length, "u").test(typed)) return null;
    const [main, give] = typed.split("±").map(amount);
    const unit = main.unit || give.unit;
    return { base: times(main.number, unit), give: give ? times(give.number, give.unit) : null, typed };
  }

  function amount(text) {
    const [, number, unit] = new RegExp(`^ *(.*?) *(${bezelbook.told.reading.unit})? *$`).exec(text);
    return { number, unit: unit && UNITS.find(([spelled]) => spelled.test(unit))[1] };
  }

  // A number as typed times a unit. Every step stays a whole number that a browser holds exactly.
  function times(number, unit) {
    const mixed = /^(?:([0-9]+)[ ]?)?(?:([0-9]+)\/([0-9]+)|([½¼¾⅛⅜⅝⅞]))$/.exec(number);
    if (mixed && !/^[0-9]+ ?$/.test(number)) {
      const [over, under] = mixed[4] ? SIGNS[mixed[4]] : [Number(mixed[2]), Number(mixed[3])];
      return Number(mixed[1] || 0) * unit + over * (unit / under);
    }
    const [whole, tail = ""] = number.split(/[.,]/);
    return Number(whole) * unit + Number(tail) * (unit / 10 ** tail.length);
  }

  // Both units, the shop's own first: `60.3 mm (2 3/8 in)`.
  function show(nm, first) {
    return first === "in" ? `${showInch(nm)} (${showMm(nm)})` : `${showMm(nm)} (${showInch(nm)})`;
  }

  function showMm(nm) {
    return `${rounded(nm, MM, 1).replace(/\.0$/, "")} mm`;
  }

  // A fraction where that is exact to a 64th, else two decimals.
  function showInch(nm) {
    const sixtyFourth = INCH / 64;
    if (nm % sixtyFourth) return `${rounded(nm, INCH, 2)} in`;
    const parts = Math.abs(nm) / sixtyFourth;
    const whole = Math.floor(parts / 64);
    let [over, under] = [parts % 64, 64];
    while (over && over % 2 === 0) [over, under] = [over / 2, under / 2];
    const said = [whole || "", over ? `${over}/${under}` : ""].filter(Boolean).join(" ") || "0";
    return `${nm < 0 ? "-" : ""}${said} in`;
  }

  // nm / unit to so many decimals, half going to even.
  function rounded(nm, unit, places) {
    const scale = 10 ** places;
    const whole = Math.floor(nm / unit);
    const rest = (nm - whole * unit) * scale;
    let steps = Math.floor(rest / unit);
    const over = 2 * (rest - steps * unit);
    if (over > unit || (over === unit && (whole * scale + steps) % 2 !== 0)) steps += 1;
    const total = whole * scale + steps;
    const size = String(Math.abs(total)).padStart(places + 1, "0");
    return `${total < 0 ? "-" : ""}${size.slice(0, -places)}.${size.slice(-places)}`;
  }

  // The middle of a span and its ±, as a person writes it.
  function showSpan(low, high, first) {
    const give = Math.floor((high - low) / 2);
    const middle = Math.floor((low + high) / 2);
    return give ? `${show(middle, first)} ± ${showMm(give)}` : show(middle, first);
  }

  return { read, show, showMm, showInch, showSpan };
})();
