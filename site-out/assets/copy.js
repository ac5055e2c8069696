/* Copies a quotation, or the address of the place that the page was opened at, with one press. Without this script
   both are there to be selected and copied by hand. */
(() => {
  "use strict";
  const prototype = document.querySelector("#controls .copy");
  const addressPrototype = document.querySelector("#controls .copy-address");
  const told = document.querySelector("#told");
  if (!prototype || !addressPrototype || !told) return;

  /* Where the page is not allowed the clipboard (a plain http address), through a selection. */
  const bySelection = (text) => {
    const field = document.createElement("textarea");
    field.value = text;
    field.className = "aside";
    document.body.append(field);
    const before = document.activeElement;
    field.select();
    const done = document.execCommand("copy");
    field.remove();
    before?.focus();
    if (!done) throw new Error("not copied");
  };

  const copy = async (text) => {
    try {
      await navigator.clipboard.writeText(text);
    } catch {
      bySelection(text);
    }
  };

  const button = (from, text) => {
    const made = from.cloneNode(true);
    const name = made.textContent;
    let timer = 0;
    made.addEventListener("click", async () => {
      let word = made.dataset.done;
      try {
        await copy(text());
      } catch {
        word = made.dataset.failed;
      }
      made.textContent = word;
      told.textContent = word;
      clearTimeout(timer);
      timer = setTimeout(() => {
        made.textContent = name;
        told.textContent = "";
      }, 2500);
    });
    return made;
  };

  for (const snippet of document.querySelectorAll(".snippet")) {
    snippet.querySelector("figcaption").append(" ", button(prototype, () => snippet.querySelector("pre").textContent));
  }

  /* The address that the publication promises to keep, not the one that this copy happens to be read at. */
  const permanent = () => {
    const kept = document.querySelector("link[rel=canonical]");
    return (kept ? kept.href : location.href.split("#")[0]) + location.hash;
  };
  const foot = document.querySelector(".foot .permanent");
  if (foot) foot.append(" ", button(addressPrototype, () => permanent().split("#")[0]));

  /* One button, at the place whose address the window shows: a press on a name of a row, chart or section is enough. */
  const ofPlace = button(addressPrototype, permanent);
  const show = () => {
    ofPlace.remove();
    let target = null;
    try {
      target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
    } catch {
      return;
    }
    if (!target || target.matches("main")) return;
    const self = target.matches("h2, h3, th") ? target : target.querySelector("a.self, summary");
    if (self?.matches("summary")) self.after(ofPlace);
    else if (self?.matches("a")) self.after(" ", ofPlace);
    else (target.querySelector("th") ?? target).append(" ", ofPlace);
  };
  addEventListener("hashchange", show);
  show();
})();
