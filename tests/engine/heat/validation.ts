/**
 * The heat engine against published figures, for the validation report. Figures that descend from the same source as
 * our equation stand in a group of their own: they find slips in copying it, not errors of physics.
 */
import { loadHeat } from '../../../src/catalogue/heat.ts';
import type { AlkaliId } from '../../../src/catalogue/types.ts';
import { airFilm, type Face, outwards, verticalPlate } from '../../../src/engine/heat/convection.ts';
import { coolFromReadings } from '../../../src/engine/heat/cooling-fit.ts';
import { idealFlash } from '../../../src/engine/heat/flash-point.ts';
import { solidHeat, solutionHeat } from '../../../src/engine/heat/mixture.ts';
import { root } from '../../../src/engine/heat/numeric.ts';
import type { SolutionInput } from '../../../src/engine/heat/peak.ts';
import {
  boilingPoint,
  iceHeat,
  kohHeatCapacity,
  naohHeat,
  naohPressure,
  solutionDensity,
  waterHeat,
  waterPressure,
} from '../../../src/engine/heat/properties.ts';
import { solutionHeatOf } from '../../../src/engine/heat/solution-heat.ts';
import type { Group, Row } from '../../outside/row.ts';

const data = loadHeat();
const sea = 101.325;
const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
const btuPerPound = 2.326;

const pure = (id: AlkaliId, grams: number, purity = 1) => ({
  id,
  grams,
  purity: { nominal: purity, low: purity, high: purity },
});

function peakOf(input: SolutionInput): number {
  const heat = solutionHeatOf(data, input);
  if (heat.ok) return heat.value.peakC.nominal;
  return heat.fault.kind === 'would-boil' ? heat.fault.peakC.nominal : Number.NaN;
}

export function heat(): readonly Group[] {
  const independent: Row[] = [];
  const shared: Row[] = [];
  const add = (
    check: string,
    source: string,
    unit: string,
    expected: number,
    ours: number,
    tolerance: number,
    because: string,
    shares = false,
  ): void => {
    const row = { check, source: `${source} (tolerance: ${because})`, unit, expected, ours, tolerance };
    (shares ? shared : independent).push(row);
  };

  // Dissolving
  const naoh = (grams: number, water: number, ice = 0): SolutionInput => ({
    alkali: [pure('naoh', grams)],
    waterGrams: water,
    iceGrams: ice,
  });
  add(
    '7.2 kg NaOH into 180 kg water at 30 °C: final temperature',
    'Worked by a chemical engineer in a public forum, heat of solution 44.2 kJ/mol and the heat capacity of water',
    '°C',
    40.15,
    peakOf({ ...naoh(7200, 180_000), alkaliC: 30, waterC: 30 }),
    1,
    'the example takes the heat capacity of water for the solution',
  );
  const solid = solidHeat(data, { naoh: 800, koh: 0 }, 25, 'nominal');
  const felder =
    (solutionHeat(data, { naoh: 799.942, koh: 0, water: 1441.2 }, 25, 'nominal') -
      solid -
      1441.2 * waterHeat(data.water, 25)) /
    2241.1;
  add(
    '20 mol NaOH + 80 mol water, 25 °C to 25 °C: heat per kg',
    'Felder & Rousseau, solution 8.83 (heat of solution on the older NBS Circular 500 base)',
    'kJ/kg',
    -307,
    felder,
    16,
    'the older base gives 3.7 % less heat: our low end',
  );
  const t70 = celsius(70);
  add(
    '45 % NaOH made from solid and water at 70 °F, back to 70 °F: heat per kg',
    'Smith, Van Ness & Abbott ch. 12, enthalpy-concentration chart (quoted from memory)',
    'kJ/kg',
    -336.1,
    naohHeat(data.naoh, 0.45, t70) -
      solidHeat(data, { naoh: 0.45, koh: 0 }, t70, 'high') -
      0.55 * waterHeat(data.water, t70),
    5,
    'chart and fit descend from the same measurements; the solid is on the chart’s base, our high end',
    true,
  );
  const mixed = 0.5 * naohHeat(data.naoh, 0.1, t70) + 0.5 * naohHeat(data.naoh, 0.7, celsius(200));
  add(
    'equal masses of 10 % NaOH at 70 °F and 70 % at 200 °F: temperature of the 40 % mixture',
    'Smith, Van Ness & Abbott ch. 12 (quoted from memory)',
    '°C',
    104.4,
    root((t) => naohHeat(data.naoh, 0.4, t) - mixed, 50, 150),
    1,
    'reading a chart',
    true,
  );
  add(
    'enthalpy of 20 % NaOH at 100 °F',
    'McCabe, Smith & Harriott, evaporation example, 55 Btu/lb (quoted from memory)',
    'kJ/kg',
    55 * btuPerPound,
    naohHeat(data.naoh, 0.2, celsius(100)),
    5,
    'reading a chart',
    true,
  );
  add(
    'enthalpy of 50 % NaOH at 197 °F',
    'McCabe, Smith & Harriott, evaporation example, 221 Btu/lb (quoted from memory)',
    'kJ/kg',
    221 * btuPerPound,
    naohHeat(data.naoh, 0.5, celsius(197)),
    5,
    'reading a chart',
    true,
  );
  add(
    'heat of diluting NaOH from 3 to 5 mol water, 25 °C',
    'Felder & Rousseau Table B.11: −28.87 and −37.74 kJ/mol',
    'kJ/mol',
    -37.74 + 28.87,
    dilution(3, 5),
    0.2,
    'a constant offset, fitted at 3 to 5 mol, drops out of the difference',
  );
  add(
    'heat of diluting NaOH from 5 to 10 mol water, 25 °C',
    'Felder & Rousseau Table B.11: −37.74 and −42.51 kJ/mol',
    'kJ/mol',
    -42.51 + 37.74,
    dilution(5, 10),
    0.3,
    'outside the points that any constant was fitted to',
  );
  add(
    'peak of 30 % NaOH from 25 °C',
    'trade handbook of the project, §5',
    '°C',
    108,
    peakOf(naoh(30, 70)),
    1,
    'given to 1 °C',
    true,
  );
  add(
    'the same with half of the water as ice',
    'trade handbook of the project, §5',
    '°C',
    65,
    peakOf(naoh(30, 35, 35)),
    1,
    'given to 1 °C',
    true,
  );
  add(
    '30 % NaOH of 98 % purity in half its weight of stoneware',
    'trade handbook of the project, §5',
    '°C',
    97,
    peakOf({
      alkali: [pure('naoh', 300, 0.98)],
      waterGrams: 700,
      iceGrams: 0,
      vessel: { material: 'stoneware', grams: 500 },
    }),
    1,
    'given to 1 °C',
    true,
  );
  // Another way to the same peak: heat of solution from the table, heat capacity by integration of the measured one.
  const table = 39.36 / 39.9971; // kJ per g at 5 mol water, NBS 1982 base
  const share = 39.9971 / (39.9971 + 5 * 18.0153);
  add(
    'peak of 30.75 % NaOH from the heat of solution and a heat capacity of 3.60 J/(g K)',
    'Felder Table B.11 re-based to NBS 1982; Laliberté 2009 heat capacity at 30 %, 60 °C',
    '°C',
    25 + (table * 1000 * share) / 3.6,
    peakOf(naoh(share * 1000, (1 - share) * 1000)),
    2,
    'the heat capacity is independent of our equation, the heat of solution is not',
  );

  // Boiling, vapour pressure
  add(
    '50 % NaOH boils at',
    'Dow caustic soda pages',
    '°C',
    145,
    boilingPoint(data, 'naoh', 0.5, sea),
    2,
    'given to 1 °C, sources differ by 5 K at this strength',
  );
  add(
    'vapour pressure over 50 % NaOH at 20 °C',
    'Dow caustic soda pages',
    'kPa',
    0.2,
    naohPressure(data.naoh, 0.5, 20),
    0.06,
    'given to one digit',
  );
  const balej: readonly (readonly [number, number])[] = [
    [0.1, 102.7],
    [0.2, 107.9],
    [0.3, 116.8],
    [0.4, 130.9],
  ];
  for (const [w, expected] of balej)
    add(
      `${w * 100} % NaOH boils at`,
      'Balej 1985, another equation than ours',
      '°C',
      expected,
      boilingPoint(data, 'naoh', w, sea),
      1,
      'the two equations part above 40 %',
    );
  add(
    'water boils at',
    'definition, 101.325 kPa',
    '°C',
    100,
    boilingPoint(data, 'koh', 0, sea),
    0.4,
    'Balej at zero concentration',
  );
  add(
    'water boils at',
    'definition, 101.325 kPa',
    '°C',
    100,
    boilingPoint(data, 'naoh', 0, sea),
    0.2,
    'Olsson at zero concentration',
  );
  add(
    'vapour pressure of water at 55 °C',
    'IAPWS steam tables, 15.76 kPa (quoted from memory)',
    'kPa',
    15.76,
    waterPressure(data.water, 55),
    0.05,
    'interpolated between table points',
  );

  // Heat capacity and density
  const slope = (w: number, t: number): number => naohHeat(data.naoh, w, t + 0.5) - naohHeat(data.naoh, w, t - 0.5);
  add(
    'heat capacity of 30 % NaOH at 60 °C',
    'Laliberté 2009, another equation than ours',
    'J/(g K)',
    3.603,
    slope(0.3, 60),
    0.04,
    'the two agree to about 1 %',
  );
  add(
    'heat capacity of 30 % KOH at 60 °C',
    'Laliberté 2009, table',
    'J/(g K)',
    3.024,
    kohHeatCapacity(data, 0.3, 60),
    0.002,
    'table to three digits',
    true,
  );
  add(
    'density of 30 % NaOH at 20 °C',
    'CRC Handbook, concentrative properties',
    'g/mL',
    1.3277,
    solutionDensity(data.naoh.density, data.water, 0.3, 20),
    0.004,
    'Laliberté fits many sources',
  );
  add(
    'density of 50 % NaOH at 20 °C',
    'Dow caustic soda pages, specific gravity 1.52 (International Critical Tables)',
    'g/mL',
    1.52 * 0.9982,
    solutionDensity(data.naoh.density, data.water, 0.5, 20),
    0.006,
    'given to two decimals',
  );
  add(
    'density of 30 % KOH at 20 °C',
    'CRC Handbook, concentrative properties',
    'g/mL',
    1.2813,
    solutionDensity(data.koh.density, data.water, 0.3, 20),
    0.009,
    'the CRC column lies 0.2 to 0.7 % below other sources',
  );
  add(
    'heat to bring 1 g of ice at 0 °C to water at 25 °C',
    'CRC: 6.01 kJ/mol, IAPWS: 104.8 J/g',
    'J/g',
    6010 / 18.0153 + 104.8,
    waterHeat(data.water, 25) - iceHeat(data.water, 0),
    0.3,
    'rounding',
  );

  // Natural convection
  const film = airFilm(data, 232, 23, 0.71);
  const nusselt = verticalPlate(film.rayleigh, film.prandtl).number;
  add(
    'glass fire screen 0.71 m high, 232 °C in 23 °C air: Rayleigh number',
    'Incropera, example 9.2',
    '1e9',
    1.81,
    film.rayleigh / 1e9,
    0.03,
    'three digits',
    true,
  );
  add(
    'the same: Nusselt number',
    'Incropera, example 9.2; 147.16 in the tests of an open heat-transfer library',
    '',
    147,
    nusselt,
    2,
    'three digits',
  );
  add(
    'the same: coefficient',
    'Incropera, example 9.2',
    'W/(m² K)',
    7.0,
    (nusselt * film.conductivity) / 0.71,
    0.1,
    'two digits',
  );
  const plate = (direction: Face['direction']): number => {
    const face: Face = {
      direction,
      area: 1,
      length: 0.1,
      resistance: 0,
      emissivity: 0,
      evaporation: 0,
      share: 1,
      spread: [1, 1],
    };
    return outwards(data, face, 60, 20)[0] / 40;
  };
  const simple = (factor: number): number => factor * (40 / 0.1) ** 0.25;
  add(
    'side 0.1 m high, 60 °C in 20 °C air',
    'Holman, simplified equation for air 1.42 (ΔT/L)^¼',
    'W/(m² K)',
    simple(1.42),
    plate('side'),
    0.1 * simple(1.42),
    'another fit to the same kind of measurements',
  );
  add(
    'face up, area/perimeter 0.1 m',
    'Holman, simplified equation for air 1.32 (ΔT/L)^¼',
    'W/(m² K)',
    simple(1.32),
    plate('up'),
    0.1 * simple(1.32),
    'another fit to the same kind of measurements',
  );
  add(
    'face down, area/perimeter 0.1 m',
    'Holman, simplified equation for air 0.59 (ΔT/L)^¼',
    'W/(m² K)',
    simple(0.59),
    plate('down'),
    0.2 * simple(0.59),
    'another fit to the same kind of measurements',
  );
  const wet: Face = {
    direction: 'up',
    area: 1,
    length: 0.1,
    resistance: 0,
    emissivity: 0,
    evaporation: 1000 * (0.089 + 0.0782 * 0.1),
    share: 1,
    spread: [0, 0],
  };
  add(
    'evaporation of a pool at 60 °C, room 20 °C at 50 % humidity, 0.1 m/s',
    'ASHRAE HVAC Applications, worked: 1.8 kW/m²',
    'kW/m²',
    1.8,
    outwards(data, wet, 60, 20)[0] / 1000,
    0.15,
    'ours takes the air as wet as the room allows, so that nothing cools below the room',
    true,
  );

  // Cooling by readings
  const cake = coolFromReadings(data, {
    readings: [
      { minute: 0, temperatureC: celsius(165) },
      { minute: 10, temperatureC: celsius(150) },
    ],
    targetC: celsius(70),
    roomC: celsius(35),
  });
  add(
    '165 °F in a refrigerator of 35 °F, 150 °F after 10 min: time to 70 °F',
    "OpenStax Precalculus, Newton's law",
    'min',
    107,
    cake.ok ? cake.value.minutes.nominal : Number.NaN,
    0.5,
    'given to 1 min',
  );

  // Flash points
  const flash = (parts: Parameters<typeof idealFlash>[1], inert = 0): number => idealFlash(data, parts, inert);
  add(
    'half ethanol, half water by moles',
    'solution of a problem in Crowl & Louvar, Chemical Process Safety, 297.6 K by Raoult',
    '°C',
    24.4,
    flash([{ moles: 0.5, component: 'ethanol', flashC: 13 }], 0.5),
    1,
    'flash point of ethanol known to 1 °C',
  );
  const weight = (component: string, grams: number, flashC: number) => ({
    moles: grams / (data.components.get(component)?.molarMass.value ?? Number.NaN),
    component,
    flashC,
  });
  add(
    'limonene and linalyl acetate, equal weights',
    'reference computation of the project, same data',
    '°C',
    56.8,
    flash([weight('limonene', 50, 48), weight('linalyl acetate', 50, 85)]),
    0.3,
    'same data',
    true,
  );
  add(
    'limonene 10, linalyl acetate 90 by weight',
    'reference computation of the project, same data',
    '°C',
    75,
    flash([weight('limonene', 10, 48), weight('linalyl acetate', 90, 85)]),
    0.3,
    'same data',
    true,
  );
  const eucalyptus = flash([
    weight('1,8-cineole', 85, 49),
    weight('limonene', 8, 48),
    weight('alpha-pinene', 4, 33),
    weight('p-cymene', 3, 47),
  ]);
  add(
    'cineole 85, limonene 8, α-pinene 4, p-cymene 3 by weight',
    'reference computation of the project, same data',
    '°C',
    47.7,
    eucalyptus,
    0.3,
    'same data',
    true,
  );
  add(
    'the same as eucalyptus oil',
    'middle of supplier data sheets, 44 to 52 °C',
    '°C',
    48,
    eucalyptus,
    4,
    'their range',
  );
  return [
    {
      title: 'Heat, cooling and flash points against other sources',
      about: 'Worked examples, manufacturers and handbooks whose figures do not come from our equations.',
      rows: independent,
    },
    {
      title: 'Heat: figures that share their source with our equations',
      about: 'Agreement shows that coefficients and tables were copied without a slip, not that the physics is right.',
      rows: shared,
    },
  ];
}

/** kJ/mol set free (negative) when 1 mol NaOH in `from` mol water takes water up to `to` mol at 25 °C. */
function dilution(from: number, to: number): number {
  const heat = (r: number): number => {
    const grams = 39.9971 + r * 18.0153;
    return (grams * naohHeat(data.naoh, 39.9971 / grams, 25)) / 1000;
  };
  return heat(to) - heat(from) - ((to - from) * 18.0153 * waterHeat(data.water, 25)) / 1000;
}
