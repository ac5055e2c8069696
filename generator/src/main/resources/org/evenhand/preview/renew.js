// Loads the page anew when the folder has changed, and goes back to the place that was being read.
// Served by the preview alone; no published page has it.
(function () {
  "use strict";

  var edition = document.currentScript.dataset.edition;
  var KEPT = "evenhand-preview-place";
  var failures = 0;

  // ---- The place ----

  /** The first element with an id that begins at or below the upper edge of the window. */
  function landmark() {
    var all = document.querySelectorAll("body [id]");
    for (var i = 0; i < all.length; i++) {
      var box = all[i].getBoundingClientRect();
      if (box.height > 0 && box.top >= 0) {
        return { id: all[i].id, top: box.top };
      }
    }
    return null;
  }

  function keepPlace() {
    var open = [];
    document.querySelectorAll("details").forEach(function (d, i) {
      if (d.open) open.push(i);
    });
    var place = {
      path: location.pathname,
      landmark: landmark(),
      left: window.scrollX,
      top: window.scrollY,
      open: open,
      focus: document.activeElement ? document.activeElement.id : "",
    };
    sessionStorage.setItem(KEPT, JSON.stringify(place));
  }

  function goBack(place) {
    var at = place.landmark && document.getElementById(place.landmark.id);
    var top = at ? window.scrollY + at.getBoundingClientRect().top - place.landmark.top : place.top;
    window.scrollTo({ left: place.left, top: top, behavior: "instant" });
  }

  function findPlace() {
    var place = JSON.parse(sessionStorage.getItem(KEPT) || "null");
    sessionStorage.removeItem(KEPT);
    if (!place || place.path !== location.pathname) return;
    document.querySelectorAll("details").forEach(function (d, i) {
      if (place.open.indexOf(i) >= 0) d.open = true;
    });
    var focused = place.focus && document.getElementById(place.focus);
    if (focused) focused.focus({ preventScroll: true });
    goBack(place);
    // Once more when fonts and pictures have taken their room.
    if (document.readyState !== "complete") {
      window.addEventListener("load", function () {
        goBack(place);
      });
    }
  }

  // ---- The wait ----

  function say(text) {
    var note = document.getElementById("evenhand-preview-end");
    if (!note && !text) return;
    if (!note) {
      note = document.createElement("p");
      note.id = "evenhand-preview-end";
      note.className = "evenhand-preview";
      note.setAttribute("role", "status");
      document.body.appendChild(note);
    }
    note.textContent = text;
    note.hidden = !text;
  }

  function later() {
    failures++;
    if (failures > 1) say("The preview has ended: this page is not renewed any more.");
    setTimeout(wait, Math.min(5000, 500 * failures));
  }

  /** A hidden page does not wait: a browser grants few connections, and those in sight need them. */
  function wait() {
    if (document.hidden) {
      document.addEventListener("visibilitychange", wait, { once: true });
      return;
    }
    var call = new AbortController();
    var hidden = function () {
      call.abort();
    };
    document.addEventListener("visibilitychange", hidden, { once: true });
    fetch("/.preview/next?after=" + encodeURIComponent(edition), { signal: call.signal })
      .then(function (answer) {
        if (!answer.ok) throw new Error(answer.status);
        failures = 0;
        say("");
        return answer.status === 204 ? edition : answer.text();
      })
      .then(
        function (newest) {
          document.removeEventListener("visibilitychange", hidden);
          if (newest === edition) {
            wait();
          } else {
            keepPlace();
            location.reload();
          }
        },
        function () {
          document.removeEventListener("visibilitychange", hidden);
          if (document.hidden) wait();
          else later();
        }
      );
  }

  findPlace();
  wait();
})();
