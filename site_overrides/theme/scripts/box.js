// The one box: reads what is typed, asks for the one thing that is missing, and shows the answer at an address of its own.
"use strict";

(() => {
  const { make, said, asking } = bezelbook.paper;
  const { read, again } = bezelbook.words;
  const ASKED = "#ask=";
  const [box, field, how, reply, found, start] = ["box", "words", "how", "reply", "found", "start"].map((id) => document.getElementById(id));
  let shown = null;
  let pause = 0;

  // What the address asks.
  function addressed() {
    if (!location.hash.startsWith(ASKED)) return "";
    try {
      return decodeURIComponent(location.hash.slice(ASKED.length)).trim();
    } catch {
      return "";
    }
  }

  function addressOf(text) {
    return text.trim() ? ASKED + encodeURIComponent(text.trim()) : "#";
  }

  // Ask this and let the browser's way back lead to what was asked before.
  function go(text) {
    field.value = text;
    clearTimeout(pause);
    if (addressed() === text.trim()) show(text);
    else location.hash = addressOf(text);
  }

  function add(words) {
    return () => go(`${field.value.trim()} ${words}`);
  }

  function ask(question) {
    return () => go(again(question));
  }

  async function show(text) {
    shown = text.trim();
    const reading = text.trim() ? read(text) : null;
    const parts = reading ? await answered(reading, text) : [];
    if (shown !== text.trim()) return;
    reply.replaceChildren(...parts);
    found.replaceChildren(...pages(text));
    for (const element of [start, how]) element.hidden = Boolean(reading);
    document.title = reading ? `${text} – ${bezelbook.told.shop.name}` : bezelbook.told.shop.name;
  }

  async function answered(reading, text) {
    const taken = tellings(reading);
    try {
      if (reading.choice && reading.choice.at && reading.choice.at.length) return [...taken, ...await bezelbook.spokenBox.asked(reading.choice, text, add)];
      if (reading.choice && reading.choice.opening) return [...taken, ...await framed(reading, text)];
      if (reading.choice) return [...taken, ...missing(reading, text)];
      if (reading.wiring) return [...taken, wiringOf(reading.wiring)];
      const vehicle = await bezelbook.open(reading.question.vehicle);
      return [...taken, replied(vehicle, reading.question)];
    } catch (fault) {
      return [make("p", { class: "cannot" }, fault.message)];
    }
  }

  // What is too wide or too high is out, however deep it is; else how deep it may be, and the question how deep it is.
  async function framed(reading, text) {
    const { opening } = reading.choice;
    const vehicle = await bezelbook.open(opening.vehicle);
    const { answer } = bezelbook.reply.reply(vehicle, opening);
    if (answer && answer.verdict === "does not") return [replied(vehicle, opening)];
    const lines = bezelbook.reply.depths(vehicle, opening).map((line) => make("li", {}, said(line)));
    return [make("section", { class: "known" }, make("ul", {}, lines)), ...missing(reading, text)];
  }

  // How numbers were read, with the other reading one press away, and the words that named nothing.
  function tellings({ question, took, bare, adds, left }) {
    const told = took.map((one) => make("p", { class: "took" }, `${one.split(";")[0]}.`, adds ? meantToo(adds.get(one)) : meant(question, bare, one)));
    if (left.length) told.push(make("p", { class: "left" }, "Not a name in the book: ", said(left.join(" "))));
    return told;
  }

  function meantToo(readings = []) {
    return readings.map((words) => make("button", { type: "button", class: "meant", click: add(words) }, `I meant ${words}`));
  }

  function meant(question, bare, told) {
    const one = bare.find(({ parts }) => told.startsWith(`${wordsOf(parts)} read as`));
    if (!question || !one) return null;
    return one.others.map((unit) => {
      const spelled = unit === "in" ? "inches" : unit; // "165 in the hatch" is no inches
      const sizes = Object.fromEntries(one.parts.map(([need, part]) => [need, { typed: `${part} ${spelled}` }]));
      const press = ask({ ...question, sizes: { ...question.sizes, ...sizes } });
      return make("button", { type: "button", class: "meant", click: press }, `I meant ${wordsOf(one.parts)} ${unit}`);
    });
  }

  function wordsOf(parts) {
    return parts.map(([, part]) => part).join(" x ");
  }

  function missing({ choice: { about, ask: words, options, open } }, text) {
    if (open) return [deep(words), ...(options.length ? [asking("Or is it this one?", offered(options, text))] : [])];
    const note = about === "thing" ? make("p", { class: "hint" }, "Or type its depth, such as 165, or its width x height x depth.") : null;
    return [asking(words, offered(options, text), note)];
  }

  function offered(options, text) {
    return bezelbook.names.nearest(options, text).map(([name, say]) => ({ words: name, tell: "", press: add(say) }));
  }

  function replied(vehicle, question) {
    if (Object.hasOwn(question, "speaker")) return bezelbook.spokenBox.replied(vehicle, question, ask, terminal());
    const { answer, added, cannot } = bezelbook.reply.reply(vehicle, question);
    if (cannot) return instead(cannot, vehicle, question);
    const decider = bezelbook.reply.decider(vehicle, question);
    const { verdicts } = bezelbook.told;
    const options = decider && decider.options.map(({ words, tell, question: narrowed, verdict }) => (
      { words, tell: [tell, verdicts[verdict]].filter(Boolean).join(" · "), press: ask(narrowed) }
    ));
    return bezelbook.ticket.ticket(answer, added, vehicle, options ? asking(decider.ask, options) : null);
  }

  // Which pieces a job takes is worked out job by job on the vehicle's page.
  function wiringOf({ name, page }) {
    const link = make("a", { href: `${page}#wiring` }, "Wiring of the ", said(name));
    return make("section", { class: "known" }, make("p", {}, link, ": each job with its pieces, build by build."), terminal());
  }

  // What to say where the page has no answer: always with a way on.
  function instead(cannot, vehicle, question) {
    const plain = (words, narrowed) => ({ words, tell: "", press: ask(narrowed) });
    if (cannot === "both") {
      const unit = bezelbook.told.units.find(({ id }) => id === question.unit);
      return asking("That is a thing and a size. Which one do you mean?", [
        plain(unit.name, { ...question, sizes: {} }), ...(question.sizes.depth ? [plain("only the size", { ...question, unit: null })] : []),
      ]);
    }
    if (cannot === "mounts") {
      const { mounts } = vehicle.places[question.place];
      const known = mounts.filter(({ key }) => key.length).map(({ key, words }) => plain(words, { ...question, mounts: key }));
      return asking("Nobody has noted that mount here. Another?", [...known, plain("any mount that is known here", { ...question, mounts: null })], terminal());
    }
    const places = Object.entries(vehicle.places).map(([id, { name }]) => plain(name, { ...question, place: id }));
    return asking("The book answers for openings that take a box, and that is none. Which one?", places);
  }

  function deep(words) {
    const input = make("input", { type: "text", inputmode: "decimal", "aria-label": "Depth" });
    const send = (event) => {
      event.preventDefault();
      if (input.value.trim()) go(`${field.value.trim()} ${input.value.trim()} deep`);
    };
    return make("form", { class: "asking", submit: send }, make("h2", {}, words), make("div", { class: "line" }, input, make("button", { type: "submit" }, "Ask")));
  }

  function terminal() {
    return make("p", { class: "hint" }, "For just that, ask at the shop's computer: ", make("code", {}, `bezelbook ask "${field.value.trim()}"`));
  }

  function pages(text) {
    const named = bezelbook.names.find(text);
    if (!named.length) return [];
    const links = named.map(({ name, what, at }) => make("li", {}, make("a", { href: at }, said(name)), ` ${what}`));
    return [make("p", {}, "In the book"), make("ul", {}, links)];
  }

  box.addEventListener("submit", (event) => {
    event.preventDefault();
    go(field.value);
  });
  field.addEventListener("input", () => {
    clearTimeout(pause);
    pause = setTimeout(() => location.replace(addressOf(field.value)), 400);
    show(field.value);
  });
  window.addEventListener("hashchange", () => {
    if (addressed() === shown) return;
    field.value = addressed();
    show(field.value);
  });
  field.value = addressed();
  show(field.value);
  if (!field.value && window.matchMedia("(pointer: fine)").matches) field.focus();
})();
