"""The ferment model of src/engine/souring/model/rates.ts written a second time, for SciPy's solve_ivp.

Reads one JSON object {batches: [{mixture, parameters, temperatureC, opennessFraction, start, foulRoute, heteroRoute}],
days} from standard input and answers the pH at every sixth hour of each batch and the milliseconds a batch took.
A second hand on the same equations: bench/ferment.ts compares both in one run.
"""

import json
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp

KA = {"lactic": 10**-3.86, "acetic": 10**-4.76, "butyric": 10**-4.82, "carbonic": 10**-6.35}
GRAMS = {"lactic": 90.08, "acetic": 60.05, "butyric": 88.11}
BOUND, SUGAR, EARLY, LATE, YEAST, ENTERO, LACTIC, ACETIC, BUTYRIC, ETHANOL, MANNITOL, OTHER, CO2, AMMONIA, FOUL, FILM, SLOW = range(17)
HEXOSE_C, CELL_C, MANNITOL_C, LACTIC_C, CO2_C = 0.4, 0.4877, 0.3956, 0.4, 0.2729


def other(**made):
    carbon = {"lactic": 0.4, "acetic": 0.4, "butyric": 0.5452, "ethanol": 0.5214, "mannitol": 0.3956, "co2": 0.2729}
    return (0.4 - sum(carbon[name] * grams for name, grams in made.items())) / 0.4


HOMO = {"lactic": 0.93, "acetic": 0.02, "other": other(lactic=0.93, acetic=0.02)}
YEASTS = {"ethanol": 0.5, "co2": 0.478, "other": other(ethanol=0.5, co2=0.478)}
ENTEROS = {"lactic": 0.15, "acetic": 0.35, "ethanol": 0.1, "co2": 0.2, "other": other(lactic=0.15, acetic=0.35, ethanol=0.1, co2=0.2)}


def ramp(x):
    return min(1.0, max(0.0, x))


def warmth(guild, t):
    low, best, high = guild["temperatureMinC"], guild["temperatureBestC"], guild["temperatureMaxC"]
    if not low < t < high:
        return 0.0
    return (t - high) * (t - low) ** 2 / ((best - low) * ((best - low) * (t - best) - (best - high) * (best + low - 2 * t)))


def sourness(guild, ph):
    low, best, high = guild["minPh"], guild["bestPh"], guild["maxPh"]
    if not low < ph < high:
        return 0.0
    span = (ph - low) * (ph - high)
    return span / (span - (ph - best) ** 2)


def ph_of(mixture, y):
    lactic, acetic, butyric = y[LACTIC] / GRAMS["lactic"], y[ACETIC] / GRAMS["acetic"], y[BUTYRIC] / GRAMS["butyric"]
    buffer, start, alkalinity = mixture["bufferEqPerLPerPh"], mixture["startPh"], mixture["alkalinityEqPerL"]
    taken = 1 / (1 + 10 ** (mixture["waterPh"] - 6.35))

    def surplus(p):
        h = 10**-p
        return (
            lactic * KA["lactic"] / (KA["lactic"] + h)
            + acetic * KA["acetic"] / (KA["acetic"] + h)
            + butyric * KA["butyric"] / (KA["butyric"] + h)
            - y[AMMONIA]
            - buffer * (start - p)
            - alkalinity * (h / (KA["carbonic"] + h) - taken)
            - (h - 10**-start)
        )

    low, high = 2.2, 9.0
    for _ in range(44):
        middle = (low + high) / 2
        if surplus(middle) < 0:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def system(batch):
    mixture, parameters, temperature, openness = batch["mixture"], batch["parameters"], batch["temperatureC"], batch["opennessFraction"]
    plant, early, late, yeast, entero, foul, film = (parameters[name] for name in ("plant", "early", "late", "yeast", "entero", "foul", "film"))
    hetero, rotten = batch["heteroRoute"], batch["foulRoute"]
    dry = min(mixture["dryMatterFraction"], 0.7)
    activity = 1 - plant["waterActivitySlopeFraction"] * dry / (1 - dry) - 0.00058 * mixture["saltGPerL"]
    dryness = {name: ramp((activity - g["waterActivityMinFraction"]) / (1 - g["waterActivityMinFraction"])) for name, g in (("early", early), ("late", late), ("yeast", yeast), ("entero", entero))}
    dry_foul = ramp((activity - 0.94) / 0.06)
    critical = max(3.95, foul["criticalPhAt15PercentDm"] + foul["criticalPhRiseFactor"] * (mixture["dryMatterFraction"] - 0.15))
    warm = {name: warmth(g, temperature) for name, g in (("early", early), ("late", late), ("yeast", yeast), ("entero", entero), ("foul", foul))}
    enzyme = 2 ** ((temperature - 25) / 10) if temperature > 0 else 0.0
    nitrogen = mixture["nitrogenMolPerL"]
    most = min(plant["mostCellsGPerL"], plant["cellsPerNitrogenGPerG"] * 14.007 * nitrogen)
    most_yeast = min(yeast["mostGPerL"], yeast["cellsPerNitrogenGPerG"] * 14.007 * nitrogen)
    cell = CELL_C / HEXOSE_C

    def change(_hour, raw):
        y = np.maximum(raw, 0)
        ph = ph_of(mixture, y)
        h = 10**-ph
        u_lactic = y[LACTIC] / GRAMS["lactic"] * h / (KA["lactic"] + h)
        u_acetic = y[ACETIC] / GRAMS["acetic"] * h / (KA["acetic"] + h)

        def bears(guild, more=1.0):
            return ramp(1 - u_lactic / (guild["lacticMostMolPerL"] * more)) * ramp(1 - u_acetic / (guild["aceticMostMolPerL"] * more))

        fed = y[SUGAR] / (plant["halfSugarGPerL"] + y[SUGAR])
        by_mannitol = late["mannitolPaceFraction"] * (1 - fed) * y[MANNITOL] / (plant["halfSugarGPerL"] + y[MANNITOL])
        eats = {"early": fed, "late": fed + by_mannitol, "yeast": fed, "entero": fed}
        room = ramp(1 - (y[EARLY] + y[LATE] + y[ENTERO]) / most - y[YEAST] / most_yeast)
        mu = {name: g["muPerH"] * dryness[name] * warm[name] * sourness(g, ph) * bears(g) * eats[name] for name, g in (("early", early), ("late", late), ("yeast", yeast), ("entero", entero))}
        grow_early, grow_late = mu["early"] * room * y[EARLY], mu["late"] * room * y[LATE]
        grow_yeast = mu["yeast"] * ramp(1 - y[YEAST] / most_yeast) * y[YEAST]
        grow_entero = mu["entero"] * room * ramp(1 - y[ENTERO] / entero["mostGPerL"]) * y[ENTERO]
        rests_late = bears(late, late["restBearsFactor"])
        rest_early = early["acidAtRestGPerGPerH"] * dryness["early"] * warm["early"] * bears(early, early["restBearsFactor"]) * fed * y[EARLY]
        rest_late = late["acidAtRestGPerGPerH"] * dryness["late"] * warm["late"] * rests_late * eats["late"] * y[LATE]
        by_early = (early["acidPerGrowthGPerG"] * grow_early + rest_early) / (hetero["lactic"] + hetero["acetic"])
        homo = (late["acidPerGrowthGPerG"] * grow_late + rest_late) / 0.95
        late_eats = homo + cell * grow_late
        share = by_mannitol / eats["late"] if eats["late"] > 0 else 0.0
        by_yeast = 9 * grow_yeast + yeast["atRestGPerGPerH"] * warm["yeast"] * bears(yeast) * fed * y[YEAST]
        by_entero = 7 * grow_entero + entero["atRestGPerGPerH"] * warm["entero"] * sourness(entero, ph) * bears(entero) * fed * y[ENTERO]
        die_early = 0.004 * ramp(1 - mu["early"] / 0.02) * y[EARLY]
        die_late = 0.0012 * ramp(1 - mu["late"] / 0.02) * y[LATE]
        die_entero = entero["deathPerH"] * ramp(1 - mu["entero"] / 0.02) * y[ENTERO]
        bound = plant["releasePerH"] * y[BOUND]
        slow = plant["slowReleasePerH"] * enzyme * y[SLOW]
        gate = warm["foul"] * dry_foul * ramp((ph - critical) / 0.5)
        turned = foul["lacticTurnedPerH"] * gate * y[FOUL] * y[LACTIC]
        film_gate = warm["yeast"] * ramp((6 - ph) / 0.5)
        burnt = film["lacticMostGPerLPerDay"] / 24 * openness * film_gate * y[FILM] * y[LACTIC] / (1 + y[LACTIC])
        d = np.zeros(17)
        d[BOUND], d[SLOW] = -bound, -slow
        d[SUGAR] = bound + slow - by_early - (1 - share) * late_eats - by_yeast - by_entero - cell * (grow_early + grow_yeast + grow_entero)
        d[EARLY], d[LATE], d[YEAST], d[ENTERO] = grow_early - die_early, grow_late - die_late, grow_yeast, grow_entero - die_entero
        d[LACTIC] = hetero["lactic"] * by_early + HOMO["lactic"] * homo + ENTEROS["lactic"] * by_entero - turned - burnt
        d[ACETIC] = hetero["acetic"] * by_early + HOMO["acetic"] * homo + ENTEROS["acetic"] * by_entero + rotten["acetic"] * turned
        d[BUTYRIC] = rotten["butyric"] * turned
        d[ETHANOL] = hetero["ethanol"] * by_early + YEASTS["ethanol"] * by_yeast + ENTEROS["ethanol"] * by_entero
        d[MANNITOL] = hetero["mannitol"] * by_early - HEXOSE_C / MANNITOL_C * share * late_eats
        d[CO2] = hetero["co2"] * by_early + YEASTS["co2"] * by_yeast + ENTEROS["co2"] * by_entero + rotten["co2"] * turned + LACTIC_C / CO2_C * burnt
        d[OTHER] = hetero["other"] * by_early + HOMO["other"] * homo + YEASTS["other"] * by_yeast + ENTEROS["other"] * by_entero + rotten["other"] * turned + cell * (die_early + die_late + die_entero)
        d[AMMONIA] = enzyme * (plant["ammoniaPerH"] + plant["ammoniaByEnteroPerH"] * y[ENTERO] / entero["mostGPerL"] + plant["ammoniaByFoulPerH"] * y[FOUL]) * max(0, (ph - 4.2) / 2) * max(0, plant["labileNFraction"] * nitrogen + plant["foulNFraction"] * nitrogen * y[FOUL] - y[AMMONIA])
        d[FOUL] = foul["growthPerH"] * gate * y[FOUL] * (1 - y[FOUL])
        d[FILM] = film["growthPerH"] * film_gate * openness * y[FILM] * (1 - y[FILM])
        return d

    return change


def main():
    asked = json.load(sys.stdin)
    hours = np.arange(0, asked["days"] * 24 + 0.01, 6.0)
    answers, spent = [], 0.0
    for batch in asked["batches"]:
        change = system(batch)
        begun = time.perf_counter()
        solved = solve_ivp(change, (0, hours[-1]), batch["start"], method="LSODA", t_eval=hours, rtol=asked["relative"], atol=asked["absolute"])
        spent += time.perf_counter() - begun
        answers.append([ph_of(batch["mixture"], np.maximum(column, 0)) for column in solved.y.T])
    json.dump({"ph": answers, "msPerBatch": spent * 1000 / len(asked["batches"])}, sys.stdout)


main()
