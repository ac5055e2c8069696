"""What somebody would write in an afternoon: read, summarise, t intervals, a chart a run, a page a study.

python3 notebook.py FOLDER OUT
"""

import json
import math
import pathlib
import sys

import jinja2
import matplotlib

matplotlib.use("svg")
import matplotlib.pyplot as plt
import pandas as pd
from scipy import stats

PAGE = jinja2.Template(
    "<h1>{{ study }}</h1><table>{% for r in rows %}<tr><td>{{ r.run }}<td>{{ r.level }}<td>{{ r.settled }}"
    "<td>{{ r.peak }}<td>{{ r.power }}<td>{{ r.energy }}</tr>{% endfor %}</table>"
    "<p>{{ difference }} ± {{ half }} K</p>{% for r in rows %}<img src='{{ r.run }}.svg'>{% endfor %}"
)


def main(folder, out):
    for study in sorted((folder / "studies").iterdir()):
        to = out / study.name
        to.mkdir(parents=True, exist_ok=True)
        rows = []
        for file in sorted((study / "runs").glob("*.json")):
            run = json.loads(file.read_text())
            log = pd.read_csv((file.parent / run["log"]).resolve())
            time, temperature, power = log.iloc[:, 0], log.iloc[:, 1], log.iloc[:, 3]
            step = time.diff().iloc[1:]
            energy = ((power.iloc[1:] + power.shift().iloc[1:]) / 2 * step).sum()
            rows.append({
                "run": run["run"],
                "level": run["settings"]["cooling"],
                "settled": temperature[time >= time.iloc[-1] - 600].mean(),
                "peak": temperature.max(),
                "power": energy / time.iloc[-1],
                "energy": energy / 3.6,
            })
            figure, axes = plt.subplots(log.shape[1] - 1, 1, sharex=True)
            for axis, name in zip(axes, log.columns[1:]):
                axis.plot(time, log[name])
                axis.set_title(name)
            figure.savefig(to / (run["run"] + ".svg"))
            plt.close(figure)
        a = [r["settled"] for r in rows if r["level"] == "plate"]
        b = [r["settled"] for r in rows if r["level"] == "none"]
        test = stats.ttest_ind(a, b, equal_var=False)
        difference = sum(a) / len(a) - sum(b) / len(b)
        error = abs(difference / test.statistic) if test.statistic else math.nan
        half = error * stats.t.ppf(0.975, len(a) + len(b) - 2)
        (to / "index.html").write_text(PAGE.render(study=study.name, rows=rows, difference=difference, half=half))


main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
