// The pages of the book by name, so that the box finds a page as well as an answer.
"use strict";

bezelbook.names = (() => {
  const MOST = 6;

  // Pages whose name, or another name, has a word that begins with each word typed; failing that, with most of them.
  function find(text) {
    const typed = bezelbook.words.fold(text).filter((word) => /[a-z]/.test(word) && word.length > 1);
    if (!typed.length) return [];
    const found = bezelbook.told.pages.map((page) => ({ page, shared: shared(page, typed) })).filter(({ shared: number }) => number);
    const most = Math.max(...found.map(({ shared: number }) => number));
    return found.filter(({ shared: number }) => number === most).slice(0, MOST).map(({ page: [name, what, at] }) => ({ name, what, at }));
  }

  function shared([name, , , also], typed) {
    const words = bezelbook.words.fold([name, ...also].join(" "));
    return typed.filter((one) => words.some((word) => word.startsWith(one))).length;
  }

  // Options in order of how many words they share with what was typed; of as many, as they stood.
  function nearest(options, text) {
    const typed = bezelbook.words.fold(text).filter((word) => /[a-z]/.test(word));
    const near = (option) => shared([option[0], "", "", [option[1]]], typed);
    return options.map((option) => [near(option), option]).sort(([one], [other]) => other - one).map(([, option]) => option);
  }

  return { find, nearest };
})();
