export { budgetBar } from './drawing/budgetBar.js';
export { frontierPlot } from './drawing/frontierPlot.js';
export { planView } from './drawing/planView.js';
export { sectionView } from './drawing/sectionView.js';
export { type PlannedHall, type Roof, roofAt, slopeOf, topOf } from './layout/hall.js';
export { layBeams } from './layout/layBeams.js';
export { type Breach, breaches, type Placement } from './layout/placement.js';
export type {
  Plan,
  PlannedBeam,
  PlannedRow,
  PlanQuestion,
  Point,
  UsedFigure,
  WarmAir,
  Warning,
} from './layout/plan.js';
export { apexReach, type RowAcross, type RowDistances, rowsAcross, rowsFor } from './layout/rowsAcross.js';
export { delayAgainstForkLift, delayAgainstForkLiftControls } from './lessons/delayAgainstForkLift.js';
export { dirtEatingMargin, dirtEatingMarginControls } from './lessons/dirtEatingMargin.js';
export { flankUnderHotRoof, flankUnderHotRoofControls } from './lessons/flankUnderHotRoof.js';
export { highHall, highHallControls } from './lessons/highHall.js';
export { type Control, type Lesson, type LessonSeries, type SettingsOf, startOf } from './lessons/lesson.js';
export { twoPaths, twoPathsControls } from './lessons/twoPaths.js';
export { type BudgetPart, type BudgetQuestion, type LossBudget, lossBudget } from './range/lossBudget.js';
export { type BeamOptics, overfills, pathLoss, type RangeCurve, rangeCurve } from './range/pathLoss.js';
export { figureNamed, type OwnFigures, withOwnFigures } from './rules/ownFigures.js';
export {
  type FigureName,
  figureMeanings,
  figureNames,
  placeOf,
  type RuleFigure,
  type RuleSet,
} from './rules/ruleSet.js';
export { ruleSetNamed, ruleSets } from './rules/ruleSets.js';
export {
  type Band,
  type Detection,
  detection,
  type FireCurves,
  type FireHall,
  fireCurves,
  looksBlocked,
  type Places,
  smokeSpan,
  type WatchedFire,
  type WatchingBeam,
} from './tradeOff/detection.js';
export { fireForms, fireFromWords } from './tradeOff/fireFromWords.js';
export { firstHeld } from './tradeOff/firstHeld.js';
export { frontier, settingsOf } from './tradeOff/frontier.js';
export { limitsBroken, type StandardLimit, standardLimits } from './tradeOff/standardLimits.js';
export type { FireCost, NuisanceCell, NuisanceGrid, Setting, ToldBand, TradeOff } from './tradeOff/tradeOff.js';
export { type TradeOffQuestion, tradeOffOf } from './tradeOff/tradeOffOf.js';
