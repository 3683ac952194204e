"""Fits and roots of the fluid layer by NumPy and SciPy (Debian python3-scipy), printed as JSON.

The equations are written down here a second time, so that a slip in one of the two programs shows.
"""
import json
import os

import numpy as np
from scipy.optimize import brentq, fsolve

with open(os.path.join(os.path.dirname(__file__), "fluid-checks.json"), encoding="utf-8") as file:
    datasets = json.load(file)["datasets"]

EXPONENTS = [(-1.14883, -2.65868), (-0.0038138, -12.5645), (5.46491, -37.6289)]
EXPONENTS += [(13.0458, -74.6851), (37.4619, -192.643), (80.4945, -400.468)]
Y, L, H = np.array(datasets["d2270_table"]["rows"]).T


def walther(nu):
    """Z of ASTM D341, full form; nu in mm2/s."""
    return nu + 0.7 + sum((-1) ** i * np.exp(a + b * nu) for i, (a, b) in enumerate(EXPONENTS))


def double_log(nu):
    return np.log10(np.log10(walther(nu)))


def viscosity(intercept, slope, kelvin):
    z = 10 ** (10 ** (intercept - slope * np.log10(kelvin)))
    return brentq(lambda nu: walther(nu) - z, 0.21, 2e7, xtol=1e-14, rtol=1e-15)


def fit(low, high):
    """Least-squares Walther line of the silicone of 10 mm2/s over a range of temperatures in C."""
    rows = [(t + 273.15, nu) for t, _, nu in datasets["pdms10"]["rows"] if low <= t <= high]
    kelvin, nu = np.array(rows).T
    slope, intercept = np.polyfit(np.log10(kelvin), double_log(nu), 1)
    return {"low": low, "high": high, "intercept": intercept, "slope": -slope}


def index(cold, hot):
    """Viscosity index with table 1 of ASTM D2270."""
    low, high = np.interp(hot, Y, L), np.interp(hot, Y, H)
    if cold > high:
        return 100 * (low - cold) / (low - high)
    return 100 + (10 ** (np.log(high / cold) / np.log(hot)) - 1) / 0.00715


def from_index(celsius, nu, wanted):
    """Viscosities at 40 and 100 C of the oil with an index that passes a point, as two unknowns at once."""

    def faults(logs):
        cold, hot = np.exp(logs)
        slope = (double_log(cold) - double_log(hot)) / np.log10(373.15 / 313.15)
        intercept = double_log(cold) + slope * np.log10(313.15)
        at_point = intercept - slope * np.log10(celsius + 273.15)
        return [at_point - double_log(nu), (index(cold, hot) - wanted) / 100]

    cold, hot = np.exp(fsolve(faults, np.log([0.5 * nu, 0.1 * nu]), xtol=1e-12))
    return {"celsius": celsius, "viscosity": nu, "index": wanted, "cold": cold, "hot": hot}


lines = [(9.53, 3.7466, kelvin) for kelvin in (250, 300, 373.15, 450)] + [(5.6, 2.26, 420), (9.67, 3.87, 600)]
print(
    json.dumps(
        {
            "fits": [fit(-20, 150), fit(-10, 70), fit(0, 60)],
            "viscosities": [
                {"intercept": a, "slope": b, "temperature": kelvin, "viscosity": viscosity(a, b, kelvin)}
                for a, b, kelvin in lines
            ],
            "indices": [from_index(20, 80, 100), from_index(25, 60, 150), from_index(5, 300, 80)],
        }
    )
)
