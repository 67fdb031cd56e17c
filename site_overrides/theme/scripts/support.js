// Which notes carry an answer about typed sizes, how sure that makes it, and how many independent jobs stand behind it.
"use strict";

bezelbook.support = (() => {
  const STRONG = ["fitted", "dry-fitted", "measured"];

  // Every note that shows it by itself; if none does, a smallest set of notes that together cover every part of it.
  // Of a no the parts are the settings; of a yes they are the cells of every setting. `firm` says which it is.
  function behind({ accounts, alone }, settings, needs, notes, firm) {
    const cells = (number) => accounts[0].settings[number].cells;
    const parts = firm === "no" ? settings.map(String) : settings.flatMap((number) => cells(number).map((_, cell) => `${number} ${cell}`));
    const shown = alone.map(([note, told]) => [note, new Set(firm === "no" ? refused(told, cells, needs) : met(told, cells, needs))]);
    const covers = (chosen) => parts.every((part) => chosen.some(([, covered]) => covered.has(part)));
    const each = shown.filter((note) => covers([note]));
    const carrying = (each.length ? each : together(shown, covers)).map(([note]) => note);
    const tried = carrying.filter((note) => notes[note].form === "tried");
    const sure = each.length ? STRONG.find((word) => tried.some((note) => notes[note].sure === word)) : null;
    const jobs = new Set((sure ? tried : carrying).map((note) => notes[note].job));
    return { sure: sure || "worked out", witnesses: jobs.size, notes: carrying };
  }

  // The settings in which a note by itself rules these sizes out.
  function refused(told, cells, needs) {
    const numbers = Object.keys(told).filter((number) => told[number].leaves);
    return numbers.filter((number) => !bezelbook.compare.takes(told[number].leaves, needs, cells(number)));
  }

  // The cells at which a note by itself shows that there is room for these sizes.
  function met(told, cells, needs) {
    return Object.entries(told).flatMap(([number, { sure }]) => {
      const enough = cells(number).map(({ need }, cell) => (needs[need] || [0, 0])[1] <= sure[cell] && `${number} ${cell}`);
      return enough.filter(Boolean);
    });
  }

  // Drop notes in their order for as long as the others still show it; no note at all when they only do so in a way
  // that cannot be taken apart here.
  function together(shown, covers) {
    if (!covers(shown)) return [];
    return shown.reduce((core, note) => {
      const fewer = core.filter((one) => one !== note);
      return covers(fewer) ? fewer : core;
    }, shown);
  }

  return { behind };
})();
