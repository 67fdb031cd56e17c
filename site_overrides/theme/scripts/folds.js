// What is folded away opens when an address leads into it, and on paper nothing is folded.
"use strict";

(() => {
  const HEADINGS = "h2, h3, h4";

  // What is folded below a heading, before the next heading.
  function below(heading) {
    if (!heading.matches(HEADINGS)) return null;
    let next = heading.nextElementSibling;
    while (next && !next.matches(HEADINGS + ", details")) next = next.nextElementSibling;
    return next && next.matches("details:not([open])") ? next : null;
  }

  // Opens everything that an element is folded into, or that is folded below a heading, and shows it again, as it moved.
  function unfold() {
    const target = location.hash.length > 1 && document.getElementById(location.hash.slice(1));
    if (!target) return;
    let fold = below(target) || target.closest("details:not([open])");
    if (!fold) return;
    for (; fold; fold = target.closest("details:not([open])")) fold.open = true;
    target.scrollIntoView();
  }

  // Those that were opened for paper alone, so that they can be folded again.
  let opened = [];

  addEventListener("beforeprint", () => {
    opened = [...document.querySelectorAll("details:not([open])")];
    for (const fold of opened) fold.open = true;
  });
  addEventListener("afterprint", () => {
    for (const fold of opened) fold.open = false;
    opened = [];
  });
  addEventListener("hashchange", unfold);
  unfold();
})();
