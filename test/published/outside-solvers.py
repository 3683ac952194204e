"""Solves the stiff problems of stiff-problems.ts, and a pendulum that goes over a stop, with SciPy; prints JSON."""

import json
import math

from scipy.integrate import solve_ivp


def hires(_t, y):
    a, b, c, d, e, f, g, h = y
    bound = 280 * f * h
    return [
        -1.71 * a + 0.43 * b + 8.32 * c + 0.0007,
        1.71 * a - 8.75 * b,
        -10.03 * c + 0.43 * d + 0.035 * e,
        8.32 * b + 1.71 * c - 1.12 * d,
        -1.745 * e + 0.43 * f + 0.43 * g,
        -bound + 0.69 * d + 1.71 * e - 0.43 * f + 0.69 * g,
        bound - 1.81 * g,
        -bound + 1.81 * g,
    ]


def van_der_pol(_t, y):
    return [y[1], 1000 * (1 - y[0] ** 2) * y[1] - y[0]]


def at_end(f, start, end):
    return solve_ivp(f, (0, end), start, method="Radau", rtol=1e-11, atol=1e-14).y[:, -1].tolist()


# A pendulum let go at 2 rad: when it first passes the lowest point, and when it first turns.
def lowest(_t, y):
    return y[0]


def turned(_t, y):
    return y[1]


lowest.direction = -1
turned.direction = 1
pendulum = solve_ivp(
    lambda _t, y: [y[1], -math.sin(y[0])], (0, 6), [2, 0], method="LSODA", rtol=1e-11, atol=1e-12,
    events=[lowest, turned],
)

print(
    json.dumps(
        {
            "hires": at_end(hires, [1, 0, 0, 0, 0, 0, 0, 0.0057], 321.8122),
            "vanDerPol": at_end(van_der_pol, [2, 0], 2000),
            "pendulum": [pendulum.t_events[0][0], pendulum.t_events[1][0]],
        }
    )
)
