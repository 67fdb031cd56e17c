// Elements for the page. Whatever the book says is put in as text, and never as markup.
"use strict";

bezelbook.paper = (() => {
  // An element with attributes and children; null and false children are left out, strings become text.
  function make(tag, attributes, ...children) {
    const element = document.createElement(tag);
    for (const [name, value] of Object.entries(attributes || {})) {
      if (typeof value === "function") element.addEventListener(name, value);
      else if (value !== null && value !== false) element.setAttribute(name, value);
    }
    element.append(...children.flat().filter((child) => child !== null && child !== false));
    return element;
  }

  // Words that an author typed: whichever way their script runs, nothing beside them is turned round.
  function said(words) {
    return make("bdi", {}, words);
  }

  // A question with its answers as large buttons; each `{ words, tell, press }`.
  function asking(ask, options, note) {
    const buttons = options.map(({ words, tell, press }) => make(
      "button", { type: "button", class: "option", click: press },
      make("b", {}, said(words)), tell ? make("span", {}, said(tell)) : null,
    ));
    return make("section", { class: "asking" }, make("h2", {}, ask), make("div", { class: "options" }, buttons), note || null);
  }

  return { make, said, asking };
})();
