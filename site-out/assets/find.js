/* Narrows the questions down by word, test item, method and state, and finds figures, records and caveats. What was
   asked for stands in the address, so that it can be linked to. Without this script the page shows all questions. */
(() => {
  "use strict";
  const MOST = 40;
  const panel = document.getElementById("find");
  const found = document.getElementById("found");
  if (!panel || !found) return;
  const list = found.querySelector("ol");
  const status = panel.querySelector("[role=status]");
  const fields = Object.fromEntries([...panel.querySelectorAll("[name]")].map((field) => [field.name, field]));

  /* Small letters without accents; a number with its fraction is one word. */
  const fold = (text) => text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/\u2212/g, "-");
  const wordsOf = (text) => fold(text).match(/[\p{L}\p{N}]+(?:\.\p{N}+)*/gu) ?? [];
  /* Every word that was asked for begins a word of the text. */
  const matches = (words, asked) => asked.every((each) => words.some((word) => word.startsWith(each)));

  const part = (link) => link.getAttribute("href").split("/")[1];
  const questions = [...document.querySelectorAll("#questions .question")].map((article) => {
    const links = (kind) => [...article.querySelectorAll(`.about a[href^="${kind}/"]`)];
    const state = article.querySelector(".about .state");
    return {
      article,
      path: article.querySelector("h3 a").getAttribute("href"),
      words: wordsOf(article.textContent),
      item: new Map(links("items").map((a) => [part(a), a.textContent])),
      method: new Map(links("methods").map((a) => [part(a), a.textContent])),
      state: new Map(state ? [[state.className.match(/state-(\S+)/)[1], state.textContent]] : []),
    };
  });

  for (const name of ["item", "method", "state"]) {
    const values = new Map(questions.flatMap((question) => [...question[name]]));
    for (const [value, text] of values) fields[name].add(new Option(text, value));
    fields[name].closest("label").hidden = values.size < 2;
  }

  /* The list of everything else that can be found, loaded when it is first asked for. */
  let index = null;
  let asked = false;
  globalThis.evenhandFind = ({ pages, entries }) => {
    const kept = pages.map(([title, path]) => ({ title, path, words: wordsOf(title) }));
    index = entries.map(([kind, text, page, id]) => ({ kind, text, page: kept[page], id, words: wordsOf(text) }));
    show();
  };
  const load = () => {
    if (asked) return;
    asked = true;
    const script = document.createElement("script");
    script.src = panel.dataset.index;
    document.head.append(script);
  };

  const entryLine = (entry) => {
    const line = document.createElement("li");
    const kind = document.createElement("span");
    kind.className = "kind";
    kind.textContent = list.getAttribute("data-" + entry.kind) + " ";
    const link = document.createElement("a");
    link.href = entry.page.path + (entry.id ? "#" + encodeURIComponent(entry.id) : "");
    link.textContent = entry.text;
    line.append(kind, link);
    if (entry.id || entry.kind === "caveat") {
      const under = document.createElement("span");
      under.className = "text";
      under.textContent = entry.page.title;
      line.append(under);
    }
    return line;
  };

  /* A place is found by its own words and those of its page, but not by those of its page alone. */
  const fits = (entry, asked) =>
    asked.some((each) => matches(entry.words, [each])) &&
    asked.every((each) => matches(entry.words, [each]) || matches(entry.page.words, [each]));

  const show = () => {
    const words = wordsOf(fields.word.value);
    if (words.length) load();
    const faceted = questions.filter((question) =>
      ["item", "method", "state"].every((name) => !fields[name].value || question[name].has(fields[name].value)));
    const shown = faceted.filter((question) => matches(question.words, words));
    for (const question of questions) question.article.hidden = !shown.includes(question);
    const narrowed = faceted.length < questions.length;
    const paths = new Set(faceted.map((question) => question.path));
    const places = words.length && index
      ? index.filter((entry) => fits(entry, words) && (!narrowed || paths.has(entry.page.path)))
      : [];
    list.replaceChildren(...places.slice(0, MOST).map(entryLine));
    found.hidden = !places.length;
    const told = [];
    if (words.length || narrowed) {
      told.push(status.dataset.questions.replace("{shown}", shown.length).replace("{all}", questions.length));
    }
    if (words.length && index) told.push(status.dataset.places.replace("{n}", places.length));
    if (places.length > MOST) told.push(status.dataset.more.replace("{n}", MOST));
    status.textContent = told.join(" ");
  };

  /* After "#", since that part never leaves the reader's machine and works from a folder too. */
  const keep = () => {
    const asked = new URLSearchParams();
    for (const [name, field] of Object.entries(fields)) if (field.value.trim()) asked.set(name, field.value.trim());
    const there = asked.toString();
    const plain = location.href.split("#")[0];
    history.replaceState(history.state, "", there ? "#" + there : plain);
  };
  const recall = () => {
    if (!location.hash.includes("=") && Object.values(fields).every((field) => !field.value)) return;
    const asked = new URLSearchParams(location.hash.includes("=") ? location.hash.slice(1) : "");
    for (const [name, field] of Object.entries(fields)) field.value = asked.get(name) ?? "";
    show();
  };

  let waiting = 0;
  panel.addEventListener("input", () => {
    show();
    clearTimeout(waiting);
    waiting = setTimeout(keep, 250);
  });
  panel.querySelector("button").addEventListener("click", () => {
    for (const field of Object.values(fields)) field.value = "";
    show();
    keep();
    fields.word.focus();
  });
  fields.word.addEventListener("focus", load);
  addEventListener("hashchange", recall);
  panel.hidden = false;
  recall();
})();
