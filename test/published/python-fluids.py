"""Reference values from the general-purpose library `fluids` (Debian python3-fluids), printed as JSON."""
import json

from fluids import Reynolds, dP_from_K, friction_factor
from fluids.fittings import entrance_sharp, exit_normal

rows = []
for mean_speed in (0.05, 0.5, 5.0):
    diameter, length, density, kinematic_viscosity = 0.0013, 0.52, 970.0, 3.5e-4
    reynolds_number = Reynolds(V=mean_speed, D=diameter, nu=kinematic_viscosity)
    loss = friction_factor(Re=reynolds_number) * length / diameter + entrance_sharp() + exit_normal()
    rows.append(
        {
            "meanSpeed": mean_speed,
            "diameter": diameter,
            "length": length,
            "density": density,
            "kinematicViscosity": kinematic_viscosity,
            "reynoldsNumber": reynolds_number,
            "pressureDrop": dP_from_K(loss, rho=density, V=mean_speed),
        }
    )
print(json.dumps(rows))
