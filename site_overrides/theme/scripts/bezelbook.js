// What the book told this page, and how a vehicle's share of it is brought in when it is first named.
"use strict";

const bezelbook = (() => {
  const opened = new Map();
  const awaited = new Map();

  // Called by data/book.js.
  function book(told) {
    bezelbook.told = told;
  }

  // Called by a vehicle's own data script.
  function vehicle(told) {
    opened.set(told.id, told);
  }

  // A promise of what is told of a vehicle. A script tag works from a folder too, where a browser refuses to fetch.
  function open(id) {
    if (!awaited.has(id)) {
      const { data } = bezelbook.told.vehicles.find((one) => one.id === id);
      awaited.set(id, new Promise((done, failed) => {
        const script = document.createElement("script");
        script.src = data;
        script.onload = () => done(opened.get(id));
        script.onerror = () => failed(new Error(`${data} is missing from this copy of the site.`));
        document.head.append(script);
      }));
    }
    return awaited.get(id);
  }

  return { told: null, book, vehicle, open };
})();
