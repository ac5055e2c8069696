/* Lets a reader order the rows of a table by a column: rising, falling, and as published again. Without this script
   the rows stand as published, which is an order too. */
(() => {
  "use strict";
  const narrow = matchMedia("(max-width: 52rem)");
  const words = document.querySelector("#controls .sort-by");
  if (!words) return;

  /* The first number of a cell; a bound such as "> 45.0" counts as the number that it names. */
  const number = (text) => {
    const found = text.replace(/[\u2212\u2010]/g, "-").replace(/(\d)[\s\u00a0\u202f\u2009](?=\d{3})/g, "$1").match(/-?\d+([.,]\d+)?/);
    return found ? Number(found[0].replace(",", ".")) : NaN;
  };

  const cellAt = (row, column) => {
    let at = 0;
    for (const cell of row.cells) {
      if (at === column) return cell;
      at += cell.colSpan;
    }
    return null;
  };

  /* What a cell is ordered by; nothing for an absent value, which stands last either way. */
  const key = (row, column) => {
    const cell = cellAt(row, column);
    if (!cell || cell.querySelector(".absent") || !cell.textContent.trim()) return null;
    const text = cell.textContent.trim();
    const value = cell.matches(".n, .count") ? number(text) : NaN;
    return Number.isNaN(value) ? text : value;
  };

  const collator = new Intl.Collator(document.documentElement.lang || "en", { numeric: true });
  const compare = (a, b) =>
    typeof a === "number" && typeof b === "number" ? a - b : collator.compare(String(a), String(b));

  /* The heading cells of single columns, each with its column counted over both heading rows. */
  const headings = (table) => {
    const taken = [];
    const found = [];
    [...table.tHead.rows].forEach((row, r) => {
      taken[r] ??= [];
      let column = 0;
      for (const cell of row.cells) {
        while (taken[r][column]) column++;
        for (let down = 0; down < cell.rowSpan; down++) {
          for (let across = 0; across < cell.colSpan; across++) (taken[r + down] ??= [])[column + across] = true;
        }
        if (cell.colSpan === 1 && !cell.matches(".beside")) found.push({ cell, column });
        column += cell.colSpan;
      }
    });
    return found.sort((a, b) => a.column - b.column);
  };

  for (const table of document.querySelectorAll("table[data-sortable]")) {
    const body = table.tBodies[0];
    const published = [...body.rows];
    if (published.length < 2) continue;
    const columns = headings(table);
    const choice = words.cloneNode(true);
    const select = choice.querySelector("select");
    let now = { column: -1, falling: false };

    const order = (column, falling) => {
      now = { column, falling };
      const rows = published.map((row, index) => ({ row, index, key: column < 0 ? null : key(row, column) }));
      rows.sort((a, b) => {
        if (a.key === null || b.key === null) return (a.key === null) - (b.key === null) || a.index - b.index;
        return (falling ? -1 : 1) * compare(a.key, b.key) || a.index - b.index;
      });
      body.append(...rows.map((each) => each.row));
      for (const each of columns) {
        if (each.column === column) each.cell.setAttribute("aria-sort", falling ? "descending" : "ascending");
        else each.cell.removeAttribute("aria-sort");
      }
      select.value = column < 0 ? "" : column + (falling ? "-" : "+");
    };

    for (const { cell, column } of columns) {
      const name = cell.textContent.trim();
      const button = document.createElement("button");
      button.type = "button";
      button.className = "sort";
      button.append(...cell.childNodes);
      cell.append(button);
      button.addEventListener("click", () => {
        if (now.column !== column) order(column, false);
        else if (!now.falling) order(column, true);
        else order(-1, false);
      });
      /* "from" says little by itself: the label on the cells is the whole name. */
      const whole = cellAt(published[0], column)?.dataset.label || name;
      for (const [sign, way] of [["+", choice.dataset.rising], ["-", choice.dataset.falling]]) {
        select.add(new Option(whole + ", " + way, column + sign));
      }
    }
    select.addEventListener("change", () => {
      const chosen = select.value;
      order(chosen ? parseInt(chosen, 10) : -1, chosen.endsWith("-"));
    });
    /* A short list of a phone is read sooner than ordered. */
    if (published.length > 5) table.before(choice);

    /* On a phone the headings are not shown, and must not be stopped at. */
    const fit = () => columns.forEach(({ cell }) => (cell.querySelector("button").tabIndex = narrow.matches ? -1 : 0));
    narrow.addEventListener("change", fit);
    fit();
  }
})();
