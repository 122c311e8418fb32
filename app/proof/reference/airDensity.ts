export type AirState = {
  readonly temperatureC: number;
  readonly pressurePa: number;
  /** Relative humidity as a fraction, 0 to 1. */
  readonly humidity: number;
};

/**
 * Density of moist air by the formula of 2007, for carbon dioxide at 0.0004.
 * @returns  kg/m3; the formula itself is good to 2.2e-5 (k = 1)
 * @throws RangeError  temperature outside -20 to 60 degrees, pressure outside 50 to 110 kPa, humidity outside 0 to 1
 * @see Picard, Davis, Glaeser, Fujii, Metrologia 45 (2008) 149 (CIPM-2007)
 */
export function airDensity(air: AirState): number {
  refuse(air);
  const { temperatureC: t, pressurePa: p, humidity } = air;
  const kelvin = t + 273.15;
  const saturation = Math.exp(
    1.2378847e-5 * kelvin * kelvin - 1.9121316e-2 * kelvin + 33.93711047 - 6343.1645 / kelvin,
  );
  const enhancement = 1.00062 + 3.14e-8 * p + 5.6e-7 * t * t;
  const x = (humidity * enhancement * saturation) / p; // mole fraction of water vapour
  const z =
    1 -
    (p / kelvin) *
      (1.58123e-6 -
        2.9331e-8 * t +
        1.1043e-10 * t * t +
        (5.707e-6 - 2.051e-8 * t) * x +
        (1.9898e-4 - 2.376e-6 * t) * x * x) +
    (p / kelvin) ** 2 * (1.83e-11 - 0.765e-8 * x * x);
  return ((p * dryAir) / (z * gasConstant * kelvin)) * (1 - x * (1 - vapour / dryAir));
}

const dryAir = 28.96546e-3; // kg/mol
const vapour = 18.01528e-3;
const gasConstant = 8.314472; // as the formula's authors fixed it, J/(mol K)

/**
 * The short form of the weights recommendation, within 2e-4 from 900 to 1100 hPa, 10 to 30 degrees, under 80 %
 * humidity: beside the full formula it shows a slip in one of the three inputs.
 * @returns  kg/m3
 * @throws RangeError  as `airDensity`
 * @see OIML R 111-1:2004, E.3-1 (from memory)
 */
export function airDensityShort(air: AirState): number {
  refuse(air);
  const { temperatureC: t, pressurePa: p, humidity } = air;
  return (0.34848 * (p / 100) - 0.9 * humidity * Math.exp(0.061 * t)) / (273.15 + t);
}

function refuse({ temperatureC, pressurePa, humidity }: AirState): void {
  if (!(temperatureC >= -20 && temperatureC <= 60))
    throw new RangeError(`an air temperature lies between -20 and 60 degrees, got ${temperatureC}`);
  if (!(pressurePa >= 50_000 && pressurePa <= 110_000)) {
    throw new RangeError(`an air pressure lies between 50 and 110 kPa, got ${pressurePa / 1000} kPa`);
  }
  if (!(humidity >= 0 && humidity <= 1))
    throw new RangeError(`a relative humidity lies between 0 and 100 %, got ${humidity * 100} %`);
}
