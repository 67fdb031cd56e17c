// What to offer instead of typed sizes: the units that were published for it, and the same sizes otherwise mounted or placed.
"use strict";

bezelbook.instead = (() => {
  const MOST = 3;

  function instead(vehicle, question, known, verdict) {
    if (!bezelbook.told.wanting.includes(verdict)) return [];
    const here = { ...question, splits: known, year: null };
    const key = bezelbook.reply.keyOf(vehicle.places[question.place], known, question.mounts);
    const units = vehicle.places[question.place].choices[key].instead.map((number) => vehicle.offers[number]);
    return bestOf([...mounts(vehicle, here), ...places(vehicle, here), ...units]);
  }

  function mounts(vehicle, question) {
    if (!question.mounts) return [];
    const any = bezelbook.reply.alone(vehicle, { ...question, mounts: null });
    return any.answer.for.mounts.filter((key) => key.join() !== question.mounts.join()).flatMap((key) =>
      offered(vehicle, { ...question, mounts: key }, "another mount", ({ words }) => `with ${words}`));
  }

  function places(vehicle, question) {
    return Object.entries(vehicle.places).filter(([id]) => id !== question.place).flatMap(([id, { name }]) =>
      offered(vehicle, { ...question, place: id, mounts: null }, "another place", () => `in the ${name}`));
  }

  function offered(vehicle, question, kind, named) {
    const { answer, added, cannot } = bezelbook.reply.alone(vehicle, question);
    if (cannot || !mayBeOffered(answer)) return [];
    const place = vehicle.places[question.place];
    const stacks = answer.for.mounts.map((key) => place.mounts.find((one) => one.key.join() === key.join()));
    const conditions = added.looks.length;
    const through = kind === "another place" && stacks[0].key.length ? `, with ${bezelbook.compare.listed(stacks.map(({ words }) => words), "or")}` : "";
    return [{
      kind, words: named(stacks[0]) + through, what: null, place: question.place,
      mounts: stacks.length === 1 ? stacks[0].key : [],
      verdict: answer.verdict, condition: conditions ? answer.needs[0] : "",
      sure: answer.sure, witnesses: answer.witnesses, needs: answer.needs.slice(conditions),
      to_buy: stacks.length === 1 ? stacks[0].buy : [],
    }];
  }

  // A condition that no job carries may be put to any hole at all.
  function mayBeOffered({ verdict, witnesses }) {
    return verdict === "goes in" || (verdict === "goes in if" && witnesses > 0);
  }

  // The best few of each kind: surest first, then the least to buy.
  function bestOf(offers) {
    const ranked = offers.map((offer) => [rank(offer), offer]).sort(([one], [other]) => compared(one, other)).map(([, offer]) => offer);
    return ranked.filter((offer) => ranked.filter(({ kind }) => kind === offer.kind).indexOf(offer) < MOST);
  }

  function rank({ verdict, sure, to_buy: buy, witnesses, kind, what, place, mounts: through }) {
    const { surenesses, offers } = bezelbook.told;
    const how = surenesses.includes(sure) ? surenesses.indexOf(sure) : surenesses.length;
    return [verdict === "goes in" ? 0 : 1, how, buy.length, -witnesses, offers.indexOf(kind), what || "", place, through.join("\u0000")];
  }

  function compared(one, other) {
    const differs = one.findIndex((value, index) => value !== other[index]);
    return differs < 0 ? 0 : one[differs] < other[differs] ? -1 : 1;
  }

  return instead;
})();
