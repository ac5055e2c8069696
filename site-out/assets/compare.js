/* Lets a reader pick two levels and shows what the page holds on the two. Nothing is judged here: each pair was judged
   by the rules when the page was made, and stands in its tables, which can be read without this script. */
(() => {
  "use strict";
  const panel = document.getElementById("pick");
  const picked = document.getElementById("picked");
  if (!panel || !picked) return;
  const [first, second] = panel.querySelectorAll("select");

  /* Each level once, under its question, in the order of the page. */
  const questions = new Map();
  for (const row of document.querySelectorAll("tr[data-level]")) {
    const question = row.cells[1].querySelector("a").textContent;
    if (!questions.has(question)) questions.set(question, new Map());
    questions.get(question).set(row.dataset.level, row.cells[0].textContent.trim());
  }
  for (const select of [first, second]) {
    for (const [question, levels] of questions) {
      const group = document.createElement("optgroup");
      group.label = question;
      for (const [key, text] of levels) group.append(new Option(text, key));
      select.append(group);
    }
  }

  const make = (tag, content, className = "") => {
    const element = document.createElement(tag);
    element.append(...[content].flat());
    element.className = className;
    return element;
  };
  const withKey = (section, key) => [...section.querySelectorAll("tr[data-level]")].find((row) => row.dataset.level === key);

  /* One figure in a line: level, value with interval, n. */
  const figure = (row, unit) => {
    const text = (column) => (row.cells[column].querySelector(".absent") ? "" : row.cells[column].textContent.trim());
    const interval = text(5) && text(6) ? ` (${text(5)} … ${text(6)})` : "";
    return make("p", [row.cells[0].querySelector("a").cloneNode(true), `: ${text(3)}${unit}${interval}, ${text(2)}`], "small");
  };

  const show = () => {
    const keys = [first.value, second.value];
    picked.hidden = !keys[0] || !keys[1];
    picked.replaceChildren();
    if (picked.hidden) return;
    if (keys[0] === keys[1]) return void picked.append(make("p", picked.dataset.same));
    for (const section of document.querySelectorAll("main > section")) {
      const rows = keys.map((key) => withKey(section, key));
      const pair = [...section.querySelectorAll("tr[data-first]")].find((row) =>
        keys.includes(row.dataset.first) && keys.includes(row.dataset.second));
      if (!rows[0] || !rows[1] || !pair) continue;
      const unit = section.querySelector(".levels caption").textContent.match(/\[(.+?)\]/);
      picked.append(make("h3", section.querySelector("h2").textContent));
      picked.append(...rows.map((row) => figure(row, unit ? " " + unit[1] : "")));
      picked.append(make("p", [...pair.cells[1].cloneNode(true).childNodes, " ", pair.cells[0].textContent]));
      picked.append(...pair.cells[2].cloneNode(true).childNodes);
    }
    if (!picked.childElementCount) picked.append(make("p", picked.dataset.nothing));
  };

  const keep = () => {
    const asked = new URLSearchParams();
    for (const select of [first, second]) if (select.value) asked.set(select.name, select.value);
    const there = asked.toString();
    history.replaceState(history.state, "", there ? "#" + there : location.href.split("#")[0]);
  };
  const recall = () => {
    if (!location.hash.includes("=")) return;
    const asked = new URLSearchParams(location.hash.slice(1));
    for (const select of [first, second]) {
      const key = asked.get(select.name) ?? "";
      select.value = [...select.options].some((option) => option.value === key) ? key : "";
    }
    show();
  };

  panel.addEventListener("change", () => {
    show();
    keep();
  });
  addEventListener("hashchange", recall);
  panel.hidden = questions.size === 0;
  recall();
})();
