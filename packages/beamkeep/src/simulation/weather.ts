import { day, hour, minute } from '../columns/index.js';
import { sunPosition } from '../optics/index.js';
import { type Grid, rank } from './grid.js';
import { random } from './random.js';

/*
 * Weather enough to move a roof, wet a lens and put the sun into a window.
 *
 *   cloud      a slow chance process (days) under a quick one (hours)
 *   sun        the sun's place over the site; what reaches the ground by Kasten and Czeplak: G0 (1 - 0.75 c^3.4)
 *   air        season + passing fronts + a daily cycle that the sun drives and the clear night sky cools
 *   dew point  the day's mean air temperature less a depression that wanders
 *
 * Source of the cloud law: Kasten and Czeplak, Solar Energy 24 (1980) 177, from memory.
 */

/** What the weather of a place is like. */
export interface Climate {
  /** Mean air temperature of the year [degC]. */
  readonly mean: number;
  /** Half of the difference between the warmest and the coldest month [K]. */
  readonly season: number;
  /** Daily swing of the air temperature on a clear day [K]. */
  readonly daily: number;
  /** Spread of the passing fronts [K]. */
  readonly fronts: number;
  /** Usual share of the sky in cloud, 0 to 1. */
  readonly cloud: number;
  /** How many days weather keeps its mood [d]. */
  readonly mood: number;
  /** How far the dew point lies below the day's mean air temperature, as a rule [K]. */
  readonly dryness: number;
}

/** The weather over a log, on a grid of ten minutes. */
export interface Weather {
  /** [degC] */
  readonly air: Grid;
  /** [degC] */
  readonly dewPoint: Grid;
  /** Share of the sky, 0 to 1. */
  readonly cloud: Grid;
  /** Sunshine on level ground [W/m2]. */
  readonly sunshine: Grid;
  /** Of the sun above the horizon [degrees]. */
  readonly elevation: Grid;
  /** Of the sun, clockwise from north [degrees]. */
  readonly azimuth: Grid;
}

const step = 10 * minute;
/** So much weather before a log begins, for walls and roofs to have a past. */
const before = 4 * day;

/**
 * Weather of a place over a stretch of time.
 *
 * @param climate what the place is like
 * @param latitude degrees, north positive
 * @param longitude degrees, east positive
 * @param from first instant of the log [ms]
 * @param to last instant of the log [ms]
 */
export function weather(
  climate: Climate,
  latitude: number,
  longitude: number,
  seed: number,
  from: number,
  to: number,
): Weather {
  const draw = random(seed, 'weather');
  const start = Math.floor((from - before) / step) * step;
  const count = Math.ceil((to + day - start) / step) + 1;
  const grid = () => new Float64Array(count);
  const [air, dewPoint, cloud, sunshine, elevation, azimuth] = [grid(), grid(), grid(), grid(), grid(), grid()];
  const daily = grid();
  const slowKeep = Math.exp(-step / (climate.mood * day));
  const quickKeep = Math.exp(-step / (2 * hour));
  const frontKeep = Math.exp(-step / (1.6 * climate.mood * day));
  const dewKeep = Math.exp(-step / (1.3 * day));
  const kick = (keep: number) => Math.sqrt(1 - keep * keep) * draw.normal();
  let [slow, quick, front, dew, swing] = [draw.normal(), draw.normal(), draw.normal(), draw.normal(), 0];
  const bias = Math.log(climate.cloud / (1 - climate.cloud));
  const warmest = latitude >= 0 ? 201 : 19; // day of the year
  for (let i = 0; i < count; i++) {
    const instant = start + i * step;
    slow = slowKeep * slow + kick(slowKeep);
    quick = quickKeep * quick + kick(quickKeep);
    front = frontKeep * front + kick(frontKeep);
    dew = dewKeep * dew + kick(dewKeep);
    const place = sunPosition(instant, latitude, longitude);
    const share = 1 / (1 + Math.exp(-(bias + 1.9 * slow + 0.7 * quick)));
    const up = Math.sin((Math.max(place.refracted, 0) * Math.PI) / 180);
    elevation[i] = place.refracted;
    azimuth[i] = place.azimuth;
    cloud[i] = share;
    sunshine[i] = 1000 * up ** 1.15 * (1 - 0.75 * share ** 3.4);
    swing += (step / hour) * (-swing / 6 + 2.2e-3 * (sunshine[i] as number) - 0.35 * (1 - 0.7 * share));
    daily[i] = swing;
    const season = climate.season * Math.cos((2 * Math.PI * (instant / day - warmest)) / 365.2425);
    air[i] = climate.mean + season + climate.fronts * front;
    dewPoint[i] = (air[i] as number) - climate.dryness * (1 - 0.5 * share) + 1.8 * dew;
  }
  const typical = typicalSwing(daily);
  const middle = daily.reduce((sum, value) => sum + value, 0) / count;
  for (let i = 0; i < count; i++) {
    air[i] = (air[i] as number) + (((daily[i] as number) - middle) * climate.daily) / typical;
  }
  const onGrid = (values: Float64Array): Grid => ({ start, step, values });
  return {
    air: onGrid(air),
    dewPoint: onGrid(dewPoint),
    cloud: onGrid(cloud),
    sunshine: onGrid(sunshine),
    elevation: onGrid(elevation),
    azimuth: onGrid(azimuth),
  };
}

/** Daily swing, trough to crest, on one of the larger days. */
function typicalSwing(values: Float64Array): number {
  const perDay = Math.round(day / step);
  const swings: number[] = [];
  for (let i = 0; i + perDay <= values.length; i += perDay) {
    const part = values.subarray(i, i + perDay);
    swings.push(Math.max(...part) - Math.min(...part));
  }
  return Math.max(rank(swings, 0.85), 1e-6);
}

/** What a dark roof feels: the air, and the sun that it drinks in [degC]. */
export function roofHeat({ air, sunshine }: Weather, kelvinPerWatt: number): Grid {
  const values = air.values.map((value, i) => value + kelvinPerWatt * (sunshine.values[i] as number));
  return { ...air, values };
}
