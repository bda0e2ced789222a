"""The problems of page-scipy.py, in the library's own names: invented stills, run from lighting up unless they say otherwise."""

AIR = dict(pressure_Pa=101325.0, temperature_K=293.15)
HELD = dict(kind="volume", volume_m3=0.05e-3)
PRODUCT = dict(holdUp=HELD, flow_kg_s=0.1, inlet_K=288.15, transfer_W_K=400.0)
NO_HEAD = dict(heatLoss_W_K=0.0, metal_J_K=0.0, film_m3=0.1e-3)


def kettle(volume_m3, power_W, loss=3.0, metal=8000.0):
    return dict(volume_m3=volume_m3, diameter_m=0.5, heatingSurfaceHeight_m=0.05, power_W=power_W, heatLoss_W_K=loss, metal_J_K=metal)


def power(power_W):
    return dict(kind="power", power_W=power_W)


def lasting(reflux, seconds, **more):
    return dict(reflux=reflux, until=[dict(kind="duration", seconds=seconds)], **more)


def plates(count, **more):
    return dict(dict(kind="plates", count=count, plateKind="sieve", diameter_m=0.15, spacing_m=0.15, weirHeight_m=0.02, openAreaShare=0.1,
                     holeDiameter_m=0.003, holdUp=dict(kind="volume", volume_m3=0.1e-3), efficiency=0.65, efficiencyFalls=False,
                     heatLoss_W_K=0.15, metal_J_K=600.0, drop_Pa=300.0), **more)


def problem(still, charge, sheet, **more):
    return dict(dict(still=still, charge=charge, doublerCharges=[], activity="redlich-kister", heat=power(still["kettle"]["power_W"]),
                     sheet=sheet, outputs=dict(kind="every", interval_s=60.0)), **more)


CASES = {
    # The doubler's condensate fills it to its brim, so that it runs back; a bare head sends a little back into it.
    "coldPotWithDoubler": problem(
        dict(kettle=kettle(0.15, 6000.0, 4.0, 5000.0),
             doublers=[dict(volume_m3=0.0095, diameter_m=0.25, dipDepth_m=0.1, heatLoss_W_K=1.5, metal_J_K=1500.0, overflow="back")],
             column=dict(kind="none"), head=dict(heatLoss_W_K=2.0, metal_J_K=4000.0, film_m3=0.1e-3), refluxCondenser=dict(kind="none"),
             productCondenser=PRODUCT, air=AIR),
        dict(kind="volume", volume_m3=0.1, strength=0.08), [lasting("none", 15000.0)],
        doublerCharges=[dict(charge=dict(kind="volume", volume_m3=0.008, strength=0.3))], outputs=dict(kind="every", interval_s=300.0)),
    # Reflux subcooled; a step at total reflux, one at a ratio with less heat, one that holds a strength.
    "coldColumn": problem(
        dict(kettle=kettle(0.15, 5500.0), doublers=[], column=plates(6), head=NO_HEAD,
             refluxCondenser=dict(kind="total", holdUp=HELD, subcooling_K=20.0), productCondenser=PRODUCT, air=AIR),
        dict(kind="volume", volume_m3=0.12, strength=0.095),
        [lasting("total", 9600.0), lasting(3.0, 2400.0, heat=power(4500.0)),
         lasting(dict(kind="hold", strength=0.88, leastShare=0.5, mostShare=0.95), 3600.0)],
        chargeTemperature_K=298.15, outputs=dict(kind="every", interval_s=300.0)),
    # A packing that is no whole number of stages, under a partial condenser by water, with 'total' its fading duty; high up, where air is thin.
    "coldPackingUnderPartialCondenser": problem(
        dict(kettle=kettle(0.06, 3500.0, 2.0, 4000.0), doublers=[],
             column=dict(kind="packing", height_m=0.9, hetp_m=0.25, diameter_m=0.08, voidShare=0.95, surface_m2_m3=500.0, liquidShare=0.06,
                         heatLoss_W_K=0.8, metal_J_K=3000.0, drop_Pa_m=300.0),
             head=NO_HEAD,
             refluxCondenser=dict(kind="partial", holdUp=HELD,
                                  coolant=dict(kind="water", flow_kg_s=0.02, inlet_K=288.15, transfer_W_K=35.0)),
             productCondenser=PRODUCT, air=dict(pressure_Pa=90000.0, temperature_K=290.15)),
        dict(kind="volume", volume_m3=0.05, strength=0.2),
        [lasting("asSet", 6000.0), lasting(dict(kind="water", flow_kg_s=0.005), 2400.0), lasting("total", 600.0), lasting("none", 1200.0)],
        outputs=dict(kind="every", interval_s=300.0)),
}
