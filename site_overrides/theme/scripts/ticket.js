// An answer as a bench ticket: the verdict in words first, then everything that it rests on, then the notes themselves.
"use strict";

bezelbook.ticket = (() => {
  const { make, said } = bezelbook.paper;

  // `answer` is the plain answer, `added` what reply.js adds to it; the vehicle tells where notes and places are in full.
  function ticket(answer, added, { notes: links, name, places }, asking) {
    const conditions = added.looks.length;
    const place = places[answer.for.place];
    const lines = [
      argued(answer, links), unknown(answer), needs(answer.needs.slice(conditions)), instead(answer.instead), notes(answer, added, links),
      make("p", { class: "drawn" }, make("a", { href: place.at }, "Drawn to scale: ", said(place.name), ", ", said(name))),
    ];
    return make("article", { class: "ticket", "data-verdict": answer.verdict },
      verdict(answer, added), make("p", { class: "for" }, said(answer.for.words)), asking,
      number(answer), sure(answer), lines);
  }

  // "Goes in if" is one sentence with its condition; each further one would do by itself too.
  function verdict({ verdict: found, needs: lines, until_settled: until }, { looks }) {
    const words = bezelbook.told.verdicts[found];
    const [first, ...others] = looks.map((look, number) => ({ words: lines[number], look }));
    return [
      make("h2", { class: "verdict" }, words, first ? [" ", make("span", { class: "condition" }, said(first.words), ".")] : "."),
      until ? make("p", { class: "until" }, `Until settled: ${until}.`) : null,
      first ? make("p", { class: "look" }, said(first.look)) : null,
      others.length ? make("ul", { class: "or-if" }, others.map(orIf)) : null,
    ].filter(Boolean);
  }

  function orIf({ words, look }) {
    return make("li", {}, "or if ", said(words), make("small", {}, said(look)));
  }

  function number({ number: found }) {
    if (!found) return null;
    const spare = found.to_spare;
    const left = spare && make("b", {}, spare.startsWith("-") ? `short by about ${spare.replaceAll("-", "")}` : `about ${spare} left over`);
    return make("p", { class: "number" }, found.words, left ? [": ", left] : "", ".");
  }

  function sure({ verdict: found, sure: how, witnesses }) {
    if (!how) return make("p", { class: "sure" }, found === "argued over" ? "Not settled." : "No note that counts carries it.");
    return make("p", { class: "sure" }, witnesses ? `${how} · ${counted(witnesses, "job")}` : how);
  }

  function counted(many, thing) {
    return `${bezelbook.told.numbers[many] || many} ${thing}${many === 1 ? "" : "s"}`;
  }

  function argued({ argued: found }, links) {
    if (!found.length) return null;
    return part("Argued over here", make("p", {}, "These cannot all be true:"), found.map((note) => quoted(note, "strong", "", links)));
  }

  // A firm answer holds whatever turns out of these, so there they wait behind a line that says how many they are.
  function unknown({ verdict: answer, unknown: found }) {
    if (!found.length) return part("Not known", make("p", { class: "nothing" }, "Nothing unknown."));
    const items = found.map(({ what, look, changes }) => make("li", {}, make("b", {}, said(what)), " – ", said(look),
      make("span", { class: "changes" }, " – changes ", said(changes))));
    const list = make("ul", { class: "unknown" }, items);
    const firm = bezelbook.told.firm.includes(answer);
    const summary = `${counted(items.length, "thing")}, ${items.length === 1 ? "and it does not change" : "none of which changes"} this answer`;
    return part("Not known", firm ? make("details", {}, make("summary", {}, said(summary)), list) : list);
  }

  function needs(lines) {
    const nothing = make("p", { class: "nothing" }, "Nothing else that the book knows of.");
    const items = lines.map((line) => make("li", {}, said(line)));
    return part("What else it needs", items.length ? make("ul", {}, items) : nothing);
  }

  // What the counter may say next when the wish does not go in; nothing where it does.
  function instead(offers) {
    return offers.length ? part("Instead", make("ul", { class: "instead" }, offers.map(offered))) : null;
  }

  function offered({ words, verdict: found, condition, sure: how, witnesses, needs: lines, to_buy: buy }) {
    const carried = how && (witnesses ? `${how}, ${counted(witnesses, "job")}` : how);
    const takes = [carried, lines.length ? `needs ${lines.join("; ")}` : null, buy.length ? `to buy: ${buy.join(", ")}` : "nothing to buy"];
    return make("li", {}, make("b", {}, said(words)), `: ${found}`, condition ? [" ", said(condition)] : "",
      make("small", {}, said(takes.filter(Boolean).join(" · "))));
  }

  function notes({ notes: found }, { stands }, links) {
    if (!found.length) return part("Who says so", make("p", { class: "nothing" }, "No note says anything about this one."));
    return part("Who says so", found.map((note, index) => quoted(note, stands[index], note.why, links)));
  }

  function quoted({ note, author, date, sure: how, words }, stands, why, links) {
    const by = make("a", { href: links[note].at }, said(author || "not signed"), `, ${date || "no date"}`);
    return make("figure", { class: `said ${stands}` }, make("blockquote", { dir: "auto" }, words),
      make("figcaption", {}, by, ` · ${how}`, why ? [" · ", said(why)] : ""));
  }

  function part(heading, ...inside) {
    return make("section", { class: "part" }, make("h3", {}, heading), ...inside);
  }

  return { ticket };
})();
