import { UsageError } from '../../columns/index.js';
import { smoulderDoubling, usualSmoulder } from '../../numbers/index.js';
import {
  type DesignFire,
  fuelNamed,
  growthClasses,
  growthNamed,
  smoulderingFire,
  squaredFire,
  steadyFire,
} from '../../smoke/index.js';

/** What a fire may be called, for help texts. */
export const fireForms = `${growthClasses.join(', ')} (t-squared), 200kW (steady) or smouldering, each with a fuel behind a colon: fast:wood`;

const usualFuel = 'wood';

/**
 * A design fire by a short name: `fast`, `fast:polyurethaneFoam`, `200kW:heptane`, `smouldering`.
 *
 * @throws UsageError for a name that is none of these forms, or a fuel that is not known
 */
export function fireFromWords(name: string): DesignFire {
  const [form = '', fuel, ...rest] = name.split(':');
  if (rest.length > 0 || form === '') throw unknown(name);
  if (form === 'smouldering') {
    return smoulderingFire(
      {
        firstGramsPerSecond: usualSmoulder.first.value,
        doublingSeconds: smoulderDoubling.value,
        mostGramsPerSecond: usualSmoulder.most.value,
      },
      fuelNamed(fuel ?? 'smouldering'),
    );
  }
  const burns = fuelNamed(fuel ?? usualFuel);
  const steady = /^(\d+(?:\.\d+)?)kW$/.exec(form)?.[1];
  if (steady !== undefined) return steadyFire(Number(steady), burns);
  if (!growthClasses.some((growth) => growth === form)) throw unknown(name);
  return squaredFire({ growth: growthNamed(form) }, burns);
}

const unknown = (name: string): UsageError => new UsageError(`fire "${name}" is not known: use ${fireForms}`);
