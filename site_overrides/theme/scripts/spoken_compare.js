// Typed sizes of a speaker against what is published of its place.
"use strict";

bezelbook.spokenCompare = (() => {
  function reply(vehicle, { place }) {
    return { cannot: "sizes", place: vehicle.speakers.places[place] };
  }

  return { reply };
})();
