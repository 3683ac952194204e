"""The stroke and the landing of trajectories.c with SciPy's LSODA, each switch a terminal event, right-hand side in plain Python; prints
JSON with the milliseconds of the fastest of three runs and what was found for each tolerance."""

import json
import math
import time

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

G = 9.80665
RHO, NU, K, P0 = 970.0, 3.8e-4, 9e8, 101325.0
BORE, PISTON, L, D, N = 0.012, 0.01194, 0.0025, 0.0017, 2
VG, NG, W, V20 = 9e-7, 1.4, 3.2e-6, 4e-7
MU, H = RHO * NU, (BORE - PISTON) / 2
AROUND = math.pi * (BORE - H)
AS = math.pi / 4 * 0.003**2
A = math.pi / 4 * PISTON**2 + AROUND * H / 2 - AS
AH, AB = N * math.pi / 4 * D**2, math.pi / 4 * BORE**2
GAP, RIM = AROUND * H**3 / (12 * MU * L), MU * AROUND * L / H
LD = L / D
SLOPE0, HALF, PER = MU * (0.991 * 6 * math.pi + 32 * LD) / D, RHO / 2, D / NU
GROWTH = (1.25 / 13.76) ** 2 / LD
SHARE = AH / AB
SLOW, LEAVING, CONTRACTION = 0.69 * SHARE, 1 - 0.216 * SHARE, 1.68 / (1 + 1.444 * SHARE)
BUBBLE = 1 / (1988 * (1 + 0.84 * SHARE))
EXPANSION = math.exp(P0 / K) - 1


def look(v):
    re = PER * v
    x, y = re / 35.6, re / 3000
    calm = 1 / math.sqrt(1 + y * y)
    laminar = re * calm
    bubble = 0.1175 + BUBBLE * laminar
    span = 1 / (bubble + LD)
    covered = bubble * span
    grown = 1 / (1 + GROWTH * laminar)
    developing = 1.25 * math.sqrt(grown)
    full = LEAVING - SLOW + developing + CONTRACTION * covered * covered
    slope = (2 * CONTRACTION * covered * BUBBLE * LD * span * span - 0.5 * developing * GROWTH * grown) * calm**3
    square = x * x
    level = 1.486 * square
    above, below = 1 + level, 1 - 1.24 * x + 3.21 * square + level * square
    both = 1 / (above * below)
    steep = above * math.sqrt(both)
    bend = level * below - 0.5 * x * (-1.24 + 6.42 * x + 4 * level * x) * above
    onset = x * steep
    bent = full * steep * (1 + bend * both) / 35.6 + slope * onset
    loss = SLOW + full * onset
    return v * (SLOPE0 + HALF * v * loss), SLOPE0 + HALF * v * (2 * loss + re * bent), onset


def passage(drop):
    target = abs(drop)
    v = 2 * target / (SLOPE0 + math.sqrt(SLOPE0 * SLOPE0 + 8 * HALF * target))
    for _ in range(60):
        at, slope, onset = look(v)
        change = (target - at) / slope
        v += change
        if abs(change) <= 1e-6 * v:
            break
    flow = AH * v + GAP * target
    momentum = (0.644 + (1.2 - 0.644) * onset) * v + 5.5 * NU / D
    recoil = RHO * AH * v * max(momentum - 0.5 * flow / AB, 0)
    return (-flow, -recoil) if drop < 0 else (flow, recoil)


def near(x, s):
    taken, held = AS * x + s, W - V20 - A * x + s
    given = taken
    for _ in range(20):
        p = P0 * (VG / (VG - given)) ** NG
        squeezed = math.exp((P0 - p) / K)
        slope = NG * p / (VG - given)
        change = (given + held * (1 - squeezed) - taken) / (1 + held * squeezed / K * slope)
        given -= change
        if abs(change) <= 1e-7 * VG:
            return p - slope * change
    return p


def far(x, s, torn):
    return 0.0 if torn else P0 - K * math.log1p(s / (V20 + A * x - s))


def cavity(x, s):
    return s - (V20 + A * x - s) * EXPANSION


def shock(x, v, s, torn):
    p1, p2 = near(x, s), far(x, s, torn)
    flow, recoil = passage(p1 - p2)
    seal = (0.18 + 0.09 * math.exp(-((v / 0.01) ** 2))) * math.tanh(v / 0.001)
    return flow, A * (p1 - p2) + AS * (p1 - P0) - recoil + RIM * v + seal


def follow(rates, events_of, flip, values, start, end, rtol, atol, modes):
    """Restarts after each event; peaks on the dense output, eight points a step with a parabola through the highest three."""
    t, y = 0.0, np.array(start)
    peaks = np.full(len(values(t, y, modes)), -np.inf)
    while t < end:
        found = solve_ivp(
            lambda time, state: rates(time, state, modes),
            (t, end),
            y,
            method="LSODA",
            rtol=rtol,
            atol=atol,
            first_step=min(1e-7, end - t),
            dense_output=True,
            events=events_of(modes),
        )
        if found.status < 0:
            return None
        times = np.concatenate(
            [np.linspace(a, b, 9)[:-1] for a, b in zip(found.t[:-1], found.t[1:])] + [found.t[-1:]]
        )
        states = found.sol(times)
        all_values = np.array([values(time, states[:, i], modes) for i, time in enumerate(times)])
        for k in range(all_values.shape[1]):
            i = int(np.argmax(all_values[:, k]))
            top = all_values[i, k]
            if 0 < i < len(times) - 1 and abs((times[i + 1] - times[i]) / (times[i] - times[i - 1]) - 1) < 1e-6:
                a, b = all_values[i - 1, k], all_values[i + 1, k]
                top -= (b - a) ** 2 / (8 * (a - 2 * top + b)) if a - 2 * top + b < 0 else 0
            peaks[k] = max(peaks[k], top)
        t, y = found.t[-1], found.y[:, -1]
        if found.status == 1:
            flip(modes, y, [i for i, times in enumerate(found.t_events) if len(times)])
    return peaks, y


def event(f, direction):
    f.terminal, f.direction = True, direction
    return f


OMEGA = 2 * math.pi * 10


def travel(t):
    return 0.012 - 0.01 * math.cos(OMEGA * t)


def speed(t):
    return OMEGA * 0.01 * math.sin(OMEGA * t)


def stroke(rtol):
    def rates(t, y, m):
        flow, force = shock(travel(t), speed(t), y[0], m["torn"])
        return [A * speed(t) - flow, force * speed(t)]

    def values(t, y, m):
        force = shock(travel(t), speed(t), y[0], m["torn"])[1]
        return [force, -force, cavity(travel(t), y[0]) if m["torn"] else 0]

    def events_of(m):
        return [event(lambda t, y: cavity(travel(t), y[0]), -1 if m["torn"] else 1)]

    def flip(m, _y, _found):
        m["torn"] = not m["torn"]

    atol = [V20 / K * 3e6 * rtol, 1e-2 * rtol]
    start = [rest_room(0.002), 0]
    peaks, y = follow(rates, events_of, flip, values, start, 0.2, rtol, atol, {"torn": False})
    return [peaks[0], -peaks[1], peaks[2], y[1]]


def rest_room(x):
    return brentq(lambda s: near(x, s) - far(x, s, False), -1e-9, 1e-9, xtol=1e-24)


STIFF, DAMP = [4000, 60000, 60000], [2, 5, 5]


def presses(y):
    x, v = 0.72 * (y[3] - y[1]), 0.72 * (y[4] - y[2])
    return [(-y[3], -y[4]), (x - 0.021, v), (-x, -v)]


def push(y, i):
    depth, rate = presses(y)[i]
    return STIFF[i] * depth + DAMP[i] * rate


def landing(rtol):
    def forces(y, m):
        x, v = 0.72 * (y[3] - y[1]), 0.72 * (y[4] - y[2])
        flow, force = shock(x, v, y[0], m["torn"])
        pushes = [push(y, i) if m["pushing"][i] else 0 for i in range(3)]
        return flow, force, pushes[0], force + 600 * (x + 0.003) + pushes[1] - pushes[2]

    def rates(_t, y, m):
        flow, _force, tyre, strut = forces(y, m)
        return [
            A * 0.72 * (y[4] - y[2]) - flow,
            y[2],
            0.72 * strut / 0.34 - G,
            y[4],
            (tyre - 0.72 * strut) / 0.09 - G,
        ]

    def values(_t, y, m):
        _flow, force, tyre, _strut = forces(y, m)
        return [force, -force, tyre, 0.72 * (y[3] - y[1])]

    def events_of(m):
        all_events = [event(lambda t, y: cavity(0.72 * (y[3] - y[1]), y[0]), -1 if m["torn"] else 1)]
        for i in range(3):
            all_events.append(event(lambda t, y, i=i: presses(y)[i][0], -1 if m["touching"][i] else 1))
            # Once touched, what is watched is whether it pushes.
            watched = (lambda t, y, i=i: push(y, i)) if m["touching"][i] else (lambda t, y: 1.0)
            all_events.append(event(watched, -1 if m["pushing"][i] else 1))
        return all_events

    def flip(m, y, found):
        for index in found:
            if index == 0:
                m["torn"] = not m["torn"]
                continue
            i, is_push = divmod(index - 1, 2)
            if is_push:
                m["pushing"][i] = not m["pushing"][i]
            else:
                m["touching"][i] = not m["touching"][i]
                m["pushing"][i] = m["touching"][i] and push(y, i) > 0

    x = brentq(
        lambda x: AS * (near(x, rest_room(x)) - P0) + 600 * (x + 0.003) + 60000 * x, -1e-3, 0, xtol=1e-16
    )
    down = -math.sqrt(2 * G * 0.15)
    atol = [V20 / K * 3e6 * rtol, 1e-2 * rtol, rtol, 1e-2 * rtol, rtol]
    modes = {"torn": False, "touching": [True, False, True], "pushing": [True, False, True]}
    start = [rest_room(x), -x / 0.72, down, 0, down]
    found = follow(rates, events_of, flip, values, start, 1.0, rtol, atol, modes)
    peaks, _y = found
    return [peaks[0], -peaks[1], peaks[2], peaks[3]]


rows = []
for name, run in (("stroke", stroke), ("landing", landing)):
    for rtol in (1e-4, 3e-5, 1e-5, 3e-6, 1e-6, 3e-7, 1e-7):
        best, found = math.inf, None
        for _ in range(3):
            start = time.process_time()
            try:
                found = run(rtol)
            except (ValueError, ZeroDivisionError, TypeError):
                break
            best = min(best, (time.process_time() - start) * 1e3)
        if found is not None:
            rows.append({"run": name, "tolerance": rtol, "milliseconds": best, "values": [float(v) for v in found]})
print(json.dumps(rows))
