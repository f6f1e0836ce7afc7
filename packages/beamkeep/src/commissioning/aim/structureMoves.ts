import { UsageError } from '../../columns/index.js';
import { deflectionLimits, frameDrift, movementShare, type Sourced, thermalExpansion } from '../../numbers/index.js';
import { angleOfDisplacement, deflection, drift, thermalBow, thermalGrowth } from '../../optics/index.js';

/** What holds the head, as far as it is known. Nothing is assumed: what is left out is not computed. */
export interface Structure {
  /** Span of the roof member that a head hangs on [m]. */
  readonly spanMetres?: number | undefined;
  /** What its deflection limit is; without a ceiling when left out. */
  readonly roof?: keyof typeof deflectionLimits | undefined;
  /** Height of the frame, or of the head on its column [m]. */
  readonly heightMetres?: number | undefined;
  readonly material?: keyof typeof thermalExpansion | undefined;
  /** Depth of the member [m], and how much warmer one face of it gets than the other [K]. */
  readonly depthMetres?: number | undefined;
  readonly gradientKelvin?: number | undefined;
  /** Length of a member whose growth shifts one end sideways [m], and by how much it warms [K]. */
  readonly lengthMetres?: number | undefined;
  readonly warmingKelvin?: number | undefined;
}

/** One way in which the structure may move, against the margin. */
export interface StructureMove {
  readonly what: string;
  /** Turn of a head fixed to it [degrees]; of a shift: the angle under which it is seen. */
  readonly degrees: number;
  /** Movement of the structure itself [mm]. */
  readonly millimetres: number;
  /** Share of the margin before an alarm that it uses; NaN where no margin is known. */
  readonly share: number;
  /** `tight`: more than half of the margin; `beyond`: all of it. */
  readonly verdict: 'within' | 'tight' | 'beyond' | 'not known';
  readonly formula: string;
  readonly source: string;
  readonly seen: Sourced['seen'];
}

const cite = (figure: Sourced): Pick<StructureMove, 'source' | 'seen'> => ({
  source: `${figure.source}${'clause' in figure && figure.clause !== undefined ? `, ${figure.clause}` : ''}`,
  seen: figure.seen,
});

/**
 * How far the structure may move, and what that uses of the margin of an aim.
 *
 * @param structure what holds the head
 * @param separation between the two ends [m]
 * @param marginDegrees turn before an alarm [degrees]; NaN where none is known
 *
 * @throws UsageError for a length, a depth or a difference of temperature that is not above 0
 *
 * Limits of codes are what a building may do, not what this one does: the largest that its engineer had to allow.
 */
export function structureMoves(structure: Structure, separation: number, marginDegrees: number): StructureMove[] {
  const { spanMetres, roof = 'roofNoCeiling', heightMetres, material = 'steel' } = structure;
  const { depthMetres, gradientKelvin, lengthMetres, warmingKelvin } = structure;
  for (const [name, value] of Object.entries(structure))
    if (typeof value === 'number' && !(value > 0 && value < Number.POSITIVE_INFINITY))
      throw new UsageError(`structure: ${name} ${value} must be above 0`);
  const judged = (move: Omit<StructureMove, 'share' | 'verdict'>): StructureMove => {
    const share = move.degrees / marginDegrees;
    const verdict = Number.isNaN(share)
      ? 'not known'
      : share > 1
        ? 'beyond'
        : share > movementShare.value
          ? 'tight'
          : 'within';
    return { ...move, share, verdict };
  };
  const expansion = thermalExpansion[material];
  const moves: StructureMove[] = [];
  if (spanMetres !== undefined) {
    const limit = deflectionLimits[roof];
    const { endSlopeDegrees, midspanMillimetres } = deflection(spanMetres, limit.value);
    moves.push(
      judged({
        what: `the end of a roof member of ${spanMetres} m bent to its limit, span/${limit.value}`,
        degrees: endSlopeDegrees,
        millimetres: midspanMillimetres,
        formula: 'end slope = 16/5 of deflection over span',
        ...cite(limit),
      }),
    );
  }
  if (heightMetres !== undefined) {
    const [least, most] = [frameDrift.range[1], frameDrift.range[0]];
    for (const ratio of [most, least]) {
      const { rotationDegrees, topMillimetres } = drift(heightMetres, ratio);
      moves.push(
        judged({
          what: `a column of a frame of ${heightMetres} m that sways by height/${ratio} in the wind`,
          degrees: rotationDegrees,
          millimetres: topMillimetres,
          formula: 'turn = arc tangent of drift over height',
          ...cite(frameDrift),
        }),
      );
    }
  }
  if (spanMetres !== undefined && depthMetres !== undefined && gradientKelvin !== undefined) {
    const { endSlopeDegrees, midspanMillimetres } = thermalBow(
      expansion.value,
      gradientKelvin,
      depthMetres,
      spanMetres,
    );
    moves.push(
      judged({
        what: `a member of ${spanMetres} m, ${depthMetres} m deep, one face ${gradientKelvin} K warmer`,
        degrees: endSlopeDegrees,
        millimetres: midspanMillimetres,
        formula: 'end slope = expansion x difference / depth x span / 2',
        ...cite(expansion),
      }),
    );
  }
  if (lengthMetres !== undefined && warmingKelvin !== undefined) {
    const growth = thermalGrowth(expansion.value, lengthMetres, warmingKelvin);
    moves.push(
      judged({
        what: `a member of ${lengthMetres} m that warms by ${warmingKelvin} K and shifts one end sideways`,
        degrees: angleOfDisplacement(growth, separation).degrees,
        millimetres: growth,
        formula: 'growth = expansion x length x warming; angle = growth over separation',
        ...cite(expansion),
      }),
    );
  }
  return moves;
}
