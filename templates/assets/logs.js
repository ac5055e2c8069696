/* Reads a log out at a time: by the pointer on the chart, or by a slider, which the keyboard moves and a screen reader
   speaks. The values are those that are drawn. Without this script the chart, its table and the file say the same. */
(() => {
  "use strict";
  const prototype = document.querySelector("#controls .read-off");
  if (!prototype) return;

  /* "7 1 -2" is 7, 8, 6. */
  const sums = (text) => {
    let sum = 0;
    return text ? text.split(" ").map((step) => (sum += Number(step))) : [];
  };
  const written = (whole, decimals) => (whole / 10 ** decimals).toFixed(decimals).replace("-", "\u2212").replace(".", prototype.dataset.decimal);
  const time = (seconds) => {
    const whole = Math.round(Math.abs(seconds) * 10) / 10;
    const parts = [[Math.floor(whole / 3600), "h"], [Math.floor((whole % 3600) / 60), "min"], [Math.round((whole % 60) * 10) / 10, "s"]];
    const told = parts.filter(([n]) => n).map(([n, unit]) => `${String(n).replace(".", prototype.dataset.decimal)}\u202f${unit}`).join(" ") || "0\u202fs";
    return (seconds < 0 ? "\u2212" : "") + told;
  };

  for (const box of document.querySelectorAll(".log[data-log]")) {
    const log = JSON.parse(box.dataset.log);
    const columns = log.columns.map((column) => ({
      ...column,
      ms: sums(column.ms),
      value: sums(column.value),
      lasts: sums(column.lasts),
      low: sums(column.low),
      high: sums(column.high),
      gaps: new Set(column.gaps),
    }));
    const times = columns.map((column) => column.ms).reduce((most, ms) => (ms.length > most.length ? ms : most), []);
    if (!times.length) continue;

    /* The sample, or the stretch of samples, nearest to a time; none within a gap of the record. */
    const at = (column, ms) => {
      let i = 0;
      for (let step = 1 << 20; step; step >>= 1) if (i + step < column.ms.length && column.ms[i + step] <= ms) i += step;
      const end = column.ms[i] + (column.lasts[i] ?? 0);
      if (ms <= end || i + 1 === column.ms.length) return i;
      if (column.gaps.has(i + 1)) return ms < column.ms[i + 1] ? -1 : i + 1;
      return ms - end <= column.ms[i + 1] - ms ? i : i + 1;
    };
    const reading = (column, ms) => {
      const i = at(column, ms);
      if (i < 0) return prototype.dataset.absent;
      const unit = column.unit ? "\u00a0" + column.unit : "";
      const range = column.lasts.length && column.low[i] < column.high[i]
        ? ` (${written(column.low[i], column.decimals)} ${prototype.dataset.to} ${written(column.high[i], column.decimals)})`
        : "";
      return written(column.value[i], column.decimals) + unit + range;
    };

    const label = prototype.cloneNode(true);
    const slider = label.querySelector("input");
    const readings = document.createElement("p");
    readings.className = "readings";
    const cursor = document.createElement("div");
    cursor.className = "cursor";
    cursor.hidden = true;
    slider.max = times.length - 1;
    slider.value = 0;
    box.append(cursor, label, readings);

    /* The drawing that is shown, and where time runs in it. */
    const drawing = () => {
      const svg = [...box.querySelectorAll("svg")].find((each) => each.getBoundingClientRect().width > 0);
      if (!svg) return null;
      const place = log.places.find(([width]) => width === svg.viewBox.baseVal.width);
      return place && { svg, scale: svg.getBoundingClientRect().width / place[0], place };
    };

    const fit = () => {
      const now = drawing();
      if (!now) return;
      const [, left, right] = now.place;
      slider.style.marginLeft = left * now.scale + "px";
      slider.style.width = (right - left) * now.scale + "px";
    };

    const show = (ms) => {
      const texts = columns.map((column) => [column.title, reading(column, ms)]);
      const parts = [["", time(ms / 1000)], ...texts].map(([title, text]) => {
        const part = document.createElement("span");
        const value = document.createElement("b");
        value.textContent = text;
        part.append(title ? title + " " : "", value);
        return part;
      });
      readings.replaceChildren(...parts);
      slider.setAttribute("aria-valuetext", [time(ms / 1000), ...texts.map((each) => each.join(" "))].join(", "));
      const now = drawing();
      if (!now) return;
      const [, left, right, top, bottom] = now.place;
      const x = left + ((ms / 1000 - log.from) / (log.to - log.from)) * (right - left);
      cursor.hidden = false;
      cursor.style.left = x * now.scale + "px";
      cursor.style.top = now.svg.getBoundingClientRect().top - box.getBoundingClientRect().top + top * now.scale + "px";
      cursor.style.height = (bottom - top) * now.scale + "px";
    };

    const nearest = (ms) => {
      let best = 0;
      times.forEach((each, i) => {
        if (Math.abs(each - ms) < Math.abs(times[best] - ms)) best = i;
      });
      return best;
    };
    slider.addEventListener("input", () => show(times[slider.valueAsNumber]));
    box.addEventListener("pointermove", (event) => {
      const now = drawing();
      if (!now || !now.svg.contains(event.target)) return;
      const [, left, right] = now.place;
      const x = (event.clientX - now.svg.getBoundingClientRect().left) / now.scale;
      const share = Math.min(1, Math.max(0, (x - left) / (right - left)));
      slider.value = nearest((log.from + share * (log.to - log.from)) * 1000);
      show(times[slider.valueAsNumber]);
    });
    addEventListener("resize", () => {
      fit();
      if (!cursor.hidden) show(times[slider.valueAsNumber]);
    });
    slider.setAttribute("aria-valuetext", time(times[0] / 1000));
    fit();
  }
})();
