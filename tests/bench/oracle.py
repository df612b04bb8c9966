#!/usr/bin/env python3
"""Random calls of the calculators with what they must answer, reckoned here by other means.

A line each, in the form of outside_vectors.txt: request | output | expected | relative tolerance | source. Formulas are written
down anew from the publications named beside them; nothing is asked of the program. Molar masses, densities and limits are typed
from public tables (four figures), so that what rests on them is held to a thousandth. The random numbers are always the same.
"""
import datetime
import math
import random

RANDOM = random.Random(20260311)
CALLS = 20

MOLAR = {"acetone": 58.080, "propan-2-ol": 60.096, "ethanol": 46.069, "acetic-acid": 60.052, "potassium-carbonate": 138.205,
         "sodium-hydroxide": 39.997, "potassium-hydroxide": 56.106, "sodium-carbonate": 105.988}
DENSITY = {"acetone": 0.7845, "propan-2-ol": 0.7809, "ethanol": 0.7893}
EQUIVALENTS = {"potassium-carbonate": 2, "sodium-hydroxide": 1, "potassium-hydroxide": 1, "sodium-carbonate": 2}
MOLAR_VOLUME = 8.314462618 * 293.15 / 101.325  # L/mol at 20 degrees Celsius and 101.325 kPa
ALLOYS = {"375": 11.2, "417": 11.6, "585": 13.6, "750": 15.4, "916": 17.8}


def line(request, output, expected, tolerance, source):
    print(f"{request} | {output} | {expected if isinstance(expected, str) else repr(expected)} | {tolerance} | {source}")


def uniform(low, high, digits=3):
    return round(RANDOM.uniform(low, high), digits)


def water():
    for _ in range(CALLS):
        depth = uniform(0.5, 300)
        line(f"water-pressure; depth={depth} m", "fresh", depth * 1000 * 9.80665 / 1e5, 1e-9, "hydrostatics")
        feet = uniform(1, 900)
        line(f"water-pressure; depth={feet} ft", "fresh", feet * 0.3048 * 1000 * 9.80665 / 1e5, 1e-9, "hydrostatics, 1 ft = 0.3048 m")
        psi = uniform(1, 900)
        pascal = psi * 4.4482216152605 / 0.0254**2
        line(f"water-pressure; pressure={psi} psi", "fresh-depth", pascal / 9806.65, 1e-8, "pound-force by square inch")


def rates():
    for _ in range(CALLS):
        per_month = uniform(-60, 60, 2)
        line(f"rate-drift; per-day={per_month} s/month", "per-day", per_month / (365.25 / 12), 2e-7, "month of 365.25 d / 12")
        start = datetime.datetime(2020, 1, 1) + datetime.timedelta(minutes=RANDOM.randrange(1000000))
        end = start + datetime.timedelta(minutes=RANDOM.randrange(2000, 200000))
        first, second = uniform(-60, 60, 1), uniform(-60, 60, 1)
        days = (end - start).total_seconds() / 86400
        form = "%Y-%m-%d %H:%M"
        request = (f"rate-drift; first={first} s; second={second} s; from={start.strftime(form)}; to={end.strftime(form)}")
        line(request, "per-day", (second - first) / days, 1e-9, "datetime arithmetic of Python")
        hours, wrist, table = uniform(0, 24, 1), uniform(26, 34, 1), uniform(10, 24, 1)
        drift = -(hours * 0.034 * (wrist - 25) ** 2 + (24 - hours) * 0.034 * (table - 25) ** 2) / 24
        line(f"rate-drift; wrist-hours={hours} h; wrist={wrist} °C; table={table} °C", "drift", drift, 1e-9, "parabola, 0.034 ppm/K2")


def fog():
    for _ in range(CALLS):
        air, humidity, plate = uniform(5, 35, 1), uniform(15, 95, 0), uniform(36, 46, 1)

        def saturation(celsius):
            return 6.112 * math.exp(17.62 * celsius / (243.12 + celsius))

        def dew(pressure):  # by bisection of the saturation curve, not by its inverse
            low, high = -60.0, 80.0
            for _ in range(200):
                middle = (low + high) / 2
                low, high = (middle, high) if saturation(middle) < pressure else (low, middle)
            return low

        vapour = saturation(air) * humidity / 100
        warm = vapour * (plate + 273.15) / (air + 273.15)
        request = f"fog-point; temperature={air} °C; humidity={humidity:g} %; plate={plate} °C"
        line(request, "fog-point", dew(vapour), 1e-6, "Magnus, bisected")
        line(request, "fog-point-warm", dew(warm), 1e-6, "Magnus, bisected; ideal gas")


def sag():
    for _ in range(CALLS):
        volts, ohms, milliamperes = uniform(1.2, 3.2, 2), uniform(1, 60, 1), uniform(0.1, 20, 2)
        cells, drop = RANDOM.randrange(1, 4), uniform(0, 0.3, 2)
        request = (f"lamp-sag; voltage={volts} V; resistance={ohms} ohm; current={milliamperes} mA; cells={cells}; drop={drop} V")
        line(request, "under-load", cells * (volts - ohms * milliamperes / 1000) - drop, 1e-9, "Ohm's law")


def gaskets():
    for _ in range(CALLS):
        closed = uniform(0.4, 0.9, 2)
        made = round(closed + uniform(0.05, 0.3, 2), 2)
        now = round(uniform(closed + 0.01, made, 2), 2)
        request = f"old-gasket; new={made} mm; now={now} mm; closed={closed} mm"
        line(request, "set", 100 * (made - now) / (made - closed), 1e-9, "ASTM D395, method B")
        line(request, "squeeze", 100 * (now - closed) / now, 1e-9, "squeeze by the section")
        seat = uniform(20, 35, 2)
        line(f"gasket-fit; seat={seat} mm; section=0.8 mm", "ideal-inside", seat / 1.02, 1e-9, "stretch of 2 % at best, as the design guide")


def crystals():
    for _ in range(CALLS):
        seat, wall = uniform(18, 36, 2), uniform(0.3, 0.6, 2)
        line(f"crystal-size; seat={seat} mm; wall={wall} mm", "crystal", seat - 2 * wall + 0.1, 1e-9, "guides to fitting crystals")
        oversize, skirt = uniform(0.05, 0.3, 2), uniform(0.8, 1.6, 2)
        outside = seat + oversize
        inside = outside - 2 * skirt
        # Lame with the two constants solved for, rather than the formula: u(b) = -oversize / 2, radial stress 0 at the bore.
        a, b, modulus, nu = inside / 2, outside / 2, 3000.0, 0.37
        # stress_r = A - B / r2, stress_h = A + B / r2; u = r / E (stress_h - nu stress_r)
        # A = B / a2; u(b) = b / E (A (1 - nu) + B (1 + nu) / b2) = -oversize / 2
        big_b = -oversize / 2 * modulus / b / ((1 - nu) / a**2 + (1 + nu) / b**2)
        big_a = big_b / a**2
        request = f"crystal-size; seat={seat} mm; oversize={oversize} mm; skirt={skirt} mm; material=acrylic"
        line(request, "pressure", -(big_a - big_b / b**2), 1e-9, "Lame's constants solved for")
        line(request, "hoop", -(big_a + big_b / a**2), 1e-9, "Lame's constants solved for")
        coarse = ring_by_elements(outside, skirt, oversize, modulus, nu, 40)
        fine = ring_by_elements(outside, skirt, oversize, modulus, nu, 80)
        for output, one, two in (("pressure", coarse[0], fine[0]), ("hoop", coarse[1], fine[1])):
            assert abs(one - two) < 1e-4 * abs(two), (one, two)  # converged well within what is printed
            line(request, output, two, 1e-4, "finite elements along the radius, 80 of them")


def ring_by_elements(outside, skirt, oversize, modulus, nu, elements):
    """Plane-stress ring, three-node elements along the radius (Zienkiewicz and Taylor, The Finite Element Method, axisymmetric
    stress), pressed in at its rim by half the oversize: pressure at the rim, hoop stress at the bore."""
    inner, outer = outside / 2 - skirt, outside / 2
    nodes = 2 * elements + 1
    radius = [inner + skirt * k / (nodes - 1) for k in range(nodes)]
    plane = modulus / (1 - nu * nu)
    stiffness = [[0.0] * 5 for _ in range(nodes)]  # a band, two to either side
    for first in range(0, nodes - 1, 2):
        half = (radius[first + 2] - radius[first]) / 2
        for point, weight in ((-math.sqrt(0.6), 5 / 9), (0.0, 8 / 9), (math.sqrt(0.6), 5 / 9)):
            shape = (point * (point - 1) / 2, 1 - point * point, point * (point + 1) / 2)
            slope = tuple(s / half for s in (point - 0.5, -2 * point, point + 0.5))
            r = radius[first + 1] + point * half
            for i in range(3):
                for j in range(3):
                    energy = slope[i] * slope[j] + nu * (slope[i] * shape[j] + shape[i] * slope[j]) / r + shape[i] * shape[j] / r**2
                    stiffness[first + i][2 + j - i] += plane * energy * r * half * weight
    load = [0.0] * nodes
    last = nodes - 1
    stiffness[last] = [0.0, 0.0, 1.0, 0.0, 0.0]
    load[last] = -oversize / 2
    for row in range(nodes):  # elimination within the band
        for below in range(row + 1, min(row + 3, nodes)):
            factor = stiffness[below][2 + row - below] / stiffness[row][2]
            for column in range(row, min(row + 3, nodes)):
                stiffness[below][2 + column - below] -= factor * stiffness[row][2 + column - row]
            load[below] -= factor * load[row]
    moved = [0.0] * nodes
    for row in range(last, -1, -1):
        known = sum(stiffness[row][2 + k] * moved[row + k] for k in (1, 2) if row + k < nodes)
        moved[row] = (load[row] - known) / stiffness[row][2]
    spacing = radius[1] - radius[0]
    slope_in = (-3 * moved[0] + 4 * moved[1] - moved[2]) / (2 * spacing)
    slope_out = (3 * moved[-1] - 4 * moved[-2] + moved[-3]) / (2 * spacing)
    hoop = plane * (moved[0] / inner + nu * slope_in)
    radial = plane * (slope_out + nu * moved[-1] / outer)
    return -radial, -hoop


def bessel(x):
    """J1 by its integral, 400 points of the midpoint rule."""
    points = 400
    total = 0.0
    for k in range(points):
        t = math.pi * (k + 0.5) / points
        total += math.cos(t - x * math.sin(t))
    return total / points


def plates():
    """Rectangles on simple supports by Levy's single series under pressure (Timoshenko and Woinowsky-Krieger, art. 30)."""
    for _ in range(CALLS):
        width, ratio, thick = uniform(15, 24, 1), uniform(1, 2.6, 2), uniform(1.4, 2.0, 2)
        length, pressure, nu = round(width * ratio, 2), uniform(0.005, 0.02, 4), uniform(0.2, 0.42, 2)
        across = along = 0.0
        for m in range(1, 60, 2):
            alpha = m * math.pi * length / (2 * width)
            sign = (-1) ** ((m - 1) // 2)
            cosh, tanh = (math.cosh(alpha), math.tanh(alpha)) if alpha < 300 else (math.inf, 1.0)
            big_a = -2 * (alpha * tanh + 2) / (math.pi**5 * m**5 * cosh)
            big_b = 2 / (math.pi**5 * m**5 * cosh)
            # w = p a4 / D sum (4 / (pi5 m5) + A cosh + B y sinh) sin; at the centre y = 0
            square = (m * math.pi) ** 2
            across += sign * square * (4 / (math.pi**5 * m**5) + big_a)
            along -= sign * square * (big_a + 2 * big_b)
        moment = pressure * width**2 * max(across + nu * along, along + nu * across)
        request = (f"crystal-thickness; width={width} mm; length={length} mm; thickness={thick} mm; modulus=3 GPa; poisson={nu}; "
                   f"strength=70 MPa; pressure={pressure} MPa; edge=simple")
        line(request, "stress", 6 * moment / thick**2, 2e-4, "Levy's series")
    for _ in range(3):
        width, length, thick, nu = 24.0, uniform(24, 40, 1), uniform(1.6, 2.2, 2), uniform(0.2, 0.4, 2)
        across = along = 0.0
        for m in range(1, 120, 2):
            for n in range(1, 120, 2):
                x, y = math.pi * m / width, math.pi * n / length
                reach = math.hypot(x, y) * 5
                wave = 4 * 30 / (width * length) * 2 * bessel(reach) / reach / (x * x + y * y) ** 2
                across += wave * x * x
                along += wave * y * y
        request = (f"crystal-thickness; width={width:g} mm; length={length} mm; thickness={thick} mm; modulus=3 GPa; poisson={nu}; "
                   f"strength=70 MPa; load=thumb; edge=simple")
        line(request, "stress", 6 * max(across + nu * along, along + nu * across) / thick**2, 3e-3, "Navier's series, J1 by its integral")


def liquids():
    pure = {"acetone-neat": ("acetone", 0.99), "isopropanol": ("propan-2-ol", 0.99)}
    for _ in range(CALLS):
        liquid, (substance, share) = RANDOM.choice(sorted(pure.items()))
        volume, room, changes = uniform(0.5, 50, 1), uniform(10, 60, 0), uniform(0.5, 6, 1)
        litres = volume * share * DENSITY[substance] / MOLAR[substance] * MOLAR_VOLUME
        line(f"fumes; liquid={liquid}; volume={volume} mL", "vapour", litres, 1e-3, "ideal gas")
        parts = litres / (room * 1000) * 1e6
        request = f"vapour; liquid={liquid}; volume={volume} mL; room={room:g} m3; air-changes={changes}"
        line(request, "at-once", parts, 1e-3, "ideal gas")
        steps = 20000  # of the decay, by the midpoint rule
        mean = sum(math.exp(-changes * 0.25 * (k + 0.5) / steps) for k in range(steps)) / steps
        line(request, "quarter-hour", parts * mean, 1e-3, "decay added up")
        vinegar = uniform(1, 100, 1)
        line(f"fumes; liquid=white-vinegar; volume={vinegar} mL", "vapour", vinegar * 0.05 / MOLAR["acetic-acid"] * MOLAR_VOLUME, 1e-3,
             "5 % w/v by its label, ideal gas")


def baths():
    for _ in range(CALLS):
        water_parts, volume = RANDOM.randrange(2, 40), uniform(50, 900, 0)
        line(f"bath-mix; ratio=1+{water_parts}; volume={volume:g} mL", "concentrate", volume / (1 + water_parts), 1e-9, "parts")
        line(f"bath-mix; ratio={water_parts}:1; volume={volume:g} mL", "concentrate", volume / (1 + water_parts), 1e-9, "parts")
        line(f"bath-mix; ratio=1 in {water_parts}; volume={volume:g} mL", "water", volume * (1 - 1 / water_parts), 1e-9, "share")
        stock, wanted = uniform(20, 40, 1), uniform(1, 10, 1)
        line(f"bath-mix; strength={wanted} % v/v; stock={stock} % v/v; volume={volume:g} mL", "concentrate", volume * wanted / stock, 1e-9,
             "c1 V1 = c2 V2")
        clings, rinse, times = uniform(0.01, 0.5, 2), uniform(2, 20, 1), RANDOM.randrange(1, 6)
        line(f"rinse; carry-over={clings} mL; volume={rinse} mL; times={times}", "left", 1e6 * (clings / (clings + rinse)) ** times, 1e-9,
             "mass balance")


def alcohol_density(share):
    """Ethanol in water at 20 degrees Celsius, g/mL, by the general formula of OIML R 22."""
    terms = (998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042, -613838.1234, 747017.2998,
             -547846.1354, 223446.0334, -39032.85426)
    return sum(term * share**k for k, term in enumerate(terms)) / 1000


def spirits():
    """Spirit thinned by mass balance, densities by the formula."""
    for _ in range(CALLS):
        stock, wanted, volume = uniform(88, 96, 1), uniform(20, 75, 1), uniform(150, 500, 0)

        def by_mass(by_volume):
            low, high = 0.0, 1.0
            for _ in range(100):
                middle = (low + high) / 2
                low, high = (middle, high) if middle * alcohol_density(middle) < by_volume * 0.78924 else (low, middle)
            return low

        taken = volume * wanted / stock
        water_mass = volume * alcohol_density(by_mass(wanted / 100)) - taken * alcohol_density(by_mass(stock / 100))
        request = f"bath-mix; liquid=ethanol; strength={wanted} % v/v; stock={stock} % v/v; volume={volume:g} mL"
        line(request, "concentrate", taken, 1e-6, "share by volume")
        line(request, "water", water_mass / 0.99820, 1e-3, "mass balance, OIML R 22")
        weight = uniform(20, 70, 1)
        grams = weight / 100 * alcohol_density(weight / 100)
        line(f"bath-mix; liquid=ethanol; strength={weight} % w/w; stock={stock} % v/v; volume={volume:g} mL", "concentrate",
             volume * grams / (stock / 100 * 0.78924), 3e-4, "OIML R 22")


def threads():
    """Diameters and pitches of ISO 1501, as a page on metric pitches lists them."""
    pitches = {"0.3": 0.08, "0.4": 0.1, "0.5": 0.125, "0.6": 0.15, "0.7": 0.175, "0.8": 0.2, "0.9": 0.225, "1": 0.25, "1.2": 0.25,
               "1.4": 0.3}
    for _ in range(CALLS):
        name = RANDOM.choice(sorted(pitches))
        worn, crests = uniform(float(name) - 0.04, float(name), 2), RANDOM.randrange(6, 20)
        over = round(pitches[name] * (crests - 1), 3)
        line(f"screw-thread; diameter={worn} mm; over={over} mm; crests={crests}", f"thread.S{name}",
             f"fits: {name} mm by {pitches[name]} mm, ISO 1501", 0, "page on metric pitches")


def doses():
    for _ in range(CALLS):
        crust, mass, strength = RANDOM.choice(sorted(EQUIVALENTS)), uniform(5, 200, 0), uniform(2, 8, 1)
        volume = mass / MOLAR[crust] * EQUIVALENTS[crust] / (strength * 10 / MOLAR["acetic-acid"])
        line(f"crust-dose; residue={crust}; mass={mass:g} mg; liquid=white-vinegar; strength={strength} % w/v", "volume", volume, 1e-4,
             "stoichiometry")


def cells():
    for _ in range(CALLS):
        charge, mean, loss, margin = uniform(8, 200, 0), uniform(0.5, 6, 2), uniform(1, 6, 1), uniform(0, 30, 0)
        own = charge * 1000 * loss / 100 / 8760
        months = charge * 1000 * (1 - margin / 100) / (mean + own) / 8760 * 12
        if months < 3 or months > 600:
            continue
        line(f"cell-life; capacity={charge:g} mAh; mean={mean} µA; self-discharge={loss} % per year; margin={margin:g} %", "life", months,
             1e-9, "charge by current")


def gold():
    for _ in range(CALLS):
        layer, fineness = uniform(1, 200, 1), RANDOM.choice(sorted(ALLOYS))
        line(f"gold-margin; layer={layer} µm; grade=P2500; fineness={fineness}", "fine-gold",
             layer * int(fineness) / 1000 * ALLOYS[fineness] / 19.3, 1e-9, "mass balance; densities of yellow alloys, recalled")


def decodes():
    """Diameter codes of IEC 60086 as encyclopaedias print them; heights are the last two digits in tenths of a millimetre."""
    codes = {4: 4.8, 5: 5.8, 6: 6.8, 7: 7.9, 9: 9.5, 10: 10.0, 11: 11.6, 12: 12.5, 16: 16, 20: 20, 23: 23}
    systems = {"S": 1.55, "L": 1.5, "P": 1.4, "C": 3, "B": 3}
    for _ in range(CALLS):
        code, height, letter = RANDOM.choice(sorted(codes)), RANDOM.randrange(11, 77), RANDOM.choice(sorted(systems))
        request = f"cell-decode; designation={letter}R{code}{height}"
        line(request, "diameter", codes[code], 1e-9, "diameter codes of IEC 60086, encyclopaedia of cell nomenclature")
        line(request, "nominal", systems[letter], 1e-9, "system letters of IEC 60086, encyclopaedia of cell nomenclature")


def mixtures():
    """Shares against the limits of annexes I and VI of Regulation (EC) No 1272/2008, one substance in water each time."""
    def acetic(share):  # 607-002-00-6
        return "H314" if share >= 25 else "H315, H319" if share >= 10 else "none"

    def soda(share):  # 011-002-00-6
        return "H314" if share >= 2 else "H315, H319" if share >= 0.5 else "none"

    def peroxide(share):  # 008-003-00-9
        return "H318" if share >= 8 else "H319" if share >= 5 else "none"

    def alcohol(share):  # 603-117-00-0 by the limits of annex I, tables 3.3.3 and 3.8.3
        return "H319, H336" if share >= 20 else "H319" if share >= 10 else "none"

    for name, rule, most in (("acetic-acid", acetic, 80), ("sodium-hydroxide", soda, 6), ("hydrogen-peroxide", peroxide, 24),
                             ("propan-2-ol", alcohol, 90)):
        for _ in range(CALLS // 2):
            share = uniform(most / 200, most, 2)
            line(f"mixture-class; part={name}:{share}; flash=none; ph=7", "statements", rule(share), 0,
                 "annexes I and VI of Regulation (EC) No 1272/2008")


def swaps():
    """Trade numbers and the sizes that trade lists print for them: of one size and system the other number goes in."""
    pairs = {"393": "sr754sw", "309": "sr754w", "394": "sr936w", "380": "sr936sw", "384": "sr41w", "392": "sr41sw", "395": "sr927w",
             "399": "sr927sw", "303": "sr44w", "357": "sr44sw", "301": "sr43w", "386": "sr43sw"}
    for number, other in sorted(pairs.items()):
        verdict = "with care" if other.endswith("sw") else "use"  # low drain for high sags under a lamp
        line(f"cell-swap; cell={number}", f"candidate.{other}", f"{verdict}: same size, same system*", 0,
             "cross-reference lists of the trade")
    # Largest and smallest diameter and height, mm: Linden's Handbook of Batteries, table 4.9a.
    limits = {"sr41sw": (7.9, 7.55, 3.6, 3.3), "sr43sw": (11.6, 11.25, 4.2, 3.8), "sr44sw": (11.6, 11.25, 5.4, 5.0),
              "sr754sw": (7.9, 7.55, 5.4, 5.0), "sr1130sw": (11.6, 11.25, 3.05, 2.75), "sr1120sw": (11.6, 11.25, 2.1, 1.85),
              "sr927sw": (9.5, 9.15, 2.7, 2.4), "sr721sw": (7.9, 7.55, 2.1, 1.85), "sr726sw": (7.9, 7.55, 2.6, 2.3),
              "sr621sw": (6.8, 6.5, 2.15, 1.9)}
    for _ in range(CALLS):
        cell, (widest, narrowest, highest, lowest) = RANDOM.choice(sorted(limits.items()))
        across, high = uniform(narrowest, widest, 2), uniform(lowest, highest, 2)
        line(f"cell-swap; diameter={across} mm; height={high} mm; voltage=1.55 V", f"candidate.{cell}", "use: same size, same system*",
             0, "Linden's Handbook of Batteries, table 4.9a")


def ladders():
    for _ in range(CALLS):
        scratch, thick = uniform(5, 60, 0), uniform(1.2, 2.5, 2)
        # Median grains of FEPA P600 and P1500 in micrometres, and pits of twice the grain; the finest that is deep enough begins.
        removal = scratch + 2 * 12.6 + (2 * 25.8 if scratch > 2 * 12.6 else 0)
        line(f"scratch-ladder; scratch={scratch:g} µm; thickness={thick} mm; grades=P600,P1500", "left", thick - removal / 1000, 1e-6,
             "FEPA medians 25.8 and 12.6, pits twice the grain")


if __name__ == "__main__":
    for part in (water, rates, fog, sag, gaskets, crystals, plates, liquids, baths, doses, cells, gold, ladders, decodes,
                 mixtures, swaps, spirits, threads):
        part()
