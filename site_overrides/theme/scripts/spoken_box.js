// What the box shows of a question about a speaker: the answer, or what to ask first with what the book knows of it.
"use strict";

bezelbook.spokenBox = (() => {
  const { make, said, asking } = bezelbook.paper;
  const LIKELIEST = ["goes in", "goes in if", "too close", "argued over", "nobody has tried", "does not"];

  // The elements that ask which place, side or speaker is meant; `add` makes what adds words to those typed.
  async function asked(choice, text, add) {
    const vehicle = await bezelbook.open(choice.at[0][0]);
    const ask = asking(choice.ask, optionsOf(vehicle, choice, text, add), choice.about === "speaker" ? hint() : null);
    const known = choice.question ? [] : choice.at.map(([, id]) => knownOf(vehicle.speakers.places[id]));
    return choice.about === "place" ? [ask, ...known] : [...known, ask];
  }

  function hint() {
    return make("p", { class: "hint" }, "Or type its depth, such as 63 deep, or the hole it needs, such as cut-out 143.");
  }

  // A place or a speaker tells its answer beside it; of speakers those that go in come first.
  function optionsOf(vehicle, { about, at, options, question }, text, add) {
    const near = bezelbook.names.nearest(options, text).map(([name, say]) => {
      const id = say.replaceAll(" ", "-");
      const open = { place: at[0][1], splits: {}, year: null, mounts: null, tabs: null, glass: "run", sizes: {}, speaker: id };
      const put = about === "speaker" ? open : about === "place" && question ? { ...question, place: id } : null;
      const found = put && bezelbook.spokenReply.reply(vehicle, put);
      return { words: name, press: add(say), ...(found && found.answer ? told(found) : { tell: "", verdict: null }) };
    });
    const rank = ({ verdict }) => (verdict ? LIKELIEST.indexOf(verdict) : 0);
    return about === "speaker" ? near.sort((one, other) => rank(one) - rank(other)) : near;
  }

  function told({ answer: { verdict, needs }, added: { looks } }) {
    return { verdict, tell: looks.length ? `Goes in if ${needs[0]}` : bezelbook.told.verdicts[verdict] };
  }

  function knownOf({ name, at, known }) {
    const items = known.map((line) => make("li", {}, said(line)));
    return make("section", { class: "known" }, make("h3", {}, "Known of the ", make("a", { href: at }, said(name))), make("ul", {}, items));
  }

  // The answer, or where the page has none what to ask instead: always with a way on.
  function replied(vehicle, question, ask, terminal) {
    const { answer, added, cannot, place, known } = bezelbook.spokenReply.reply(vehicle, question);
    if (!cannot) return bezelbook.ticket.ticket(answer, added, { ...vehicle, places: vehicle.speakers.places }, null);
    const plain = (words, narrowed, tell = "") => ({ words, tell, press: ask({ ...question, ...narrowed }) });
    if (cannot === "both") {
      const { name } = bezelbook.told.speakers.find(({ id }) => id === question.speaker);
      return asking("That is a speaker and a size. Which one do you mean?", [plain(name, { sizes: {} }), plain("only the size", { speaker: null })], terminal);
    }
    if (cannot === "state") {
      const open = { mounts: null, tabs: null, glass: "run", splits: {}, year: null };
      const mounts = place.mounts.map(({ key, words }) => plain(`with ${words}`, { ...open, mounts: key }));
      return asking("This page has no answer for just that way of fitting it. Another?", [plain("any ring or mount that is known here", open), ...mounts], terminal);
    }
    return sizesApart(question, known, plain, terminal);
  }

  // Several sizes at once: what one of them alone rules out is out; the rest of it takes them all together.
  function sizesApart({ sizes }, known, plain, terminal) {
    const out = known.find(({ answer }) => answer.verdict === "does not");
    const options = Object.entries(sizes).map(([of, size]) => {
      const found = known.find(({ words }) => words === size.typed);
      return plain(`${of.replaceAll("_", " ")} ${size.typed} alone`, { sizes: { [of]: size } }, found ? told(found).tell : "");
    });
    const first = out ? `Does not go in: ${out.words} alone rules it out.` : "This page answers for one exact size, and one at a time. Which one?";
    return asking(first, options, terminal);
  }

  return { asked, replied };
})();
