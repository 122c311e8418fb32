/**
 * Normal gravity of the WGS 84 ellipsoid at a latitude and height, for a site whose gravity nobody has measured.
 * Real gravity differs by a few parts in 1e5; see `siteGravity` for a figure with its uncertainty.
 * @param latitudeDeg  -90 to 90
 * @param heightM  above sea level, -500 to 9000
 * @returns  m/s2
 * @throws RangeError  latitude or height outside its range
 * @see NGA.STND.0036 (2014), World Geodetic System 1984, 4.1 and 4.2
 */
export function normalGravity(latitudeDeg: number, heightM: number): number {
  if (!(Math.abs(latitudeDeg) <= 90))
    throw new RangeError(`a latitude lies between -90 and 90 degrees, got ${latitudeDeg}`);
  if (!(heightM >= -500 && heightM <= 9000))
    throw new RangeError(`a height lies between -500 and 9000 m, got ${heightM}`);
  const s = Math.sin((latitudeDeg * Math.PI) / 180) ** 2;
  const atSeaLevel = (equatorial * (1 + k * s)) / Math.sqrt(1 - e2 * s);
  const h = heightM / semiMajorM;
  return atSeaLevel * (1 - 2 * (1 + flattening + m - 2 * flattening * s) * h + 3 * h * h);
}

const equatorial = 9.7803253359;
const k = 0.00193185265241;
const e2 = 0.00669437999013;
const semiMajorM = 6378137;
const flattening = 1 / 298.257223563;
const m = 0.00344978650684;
