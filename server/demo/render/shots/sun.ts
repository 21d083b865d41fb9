import { unit, type Vec } from '../vec.ts';
import { SITE } from './site-on-earth.ts';

/** So many days into the year was the raising; later by a few weeks the sun stands little otherwise. */
const RAISING_DAY_OF_YEAR = 91;
/** Japan's time is that of the meridian of 135° east. */
const ZONE_LON = 135;

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/**
 * Where the sun stands, in house coordinates, within about a degree: P. I. Cooper's declination (Solar Energy 12,
 * 1969) and the hour angle of mean solar time, without the equation of time.
 */
export function sunOnDay(day: number, hour: number): Vec {
  const tilt = radians(23.45) * Math.sin((2 * Math.PI * (284 + RAISING_DAY_OF_YEAR + day)) / 365);
  const turn = radians(15 * (hour - 12) + SITE.lon - ZONE_LON);
  const lat = radians(SITE.lat);
  const west = Math.cos(tilt) * Math.sin(turn);
  const south = Math.cos(tilt) * Math.cos(turn) * Math.sin(lat) - Math.sin(tilt) * Math.cos(lat);
  const up = Math.cos(tilt) * Math.cos(turn) * Math.cos(lat) + Math.sin(tilt) * Math.sin(lat);
  return houseDirection(-west, -south, up);
}

function houseDirection(east: number, north: number, up: number): Vec {
  const bearing = radians(SITE.bearing);
  const [c, s] = [Math.cos(bearing), Math.sin(bearing)];
  return unit([east * c - north * s, east * s + north * c, up]);
}
