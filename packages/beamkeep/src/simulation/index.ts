export { curveLoss, type MeasuredCurve } from './effects/measured.js';
export { type Electronics, quietElectronics } from './electronics.js';
export { gaussianLobe, type Lobe } from './lobe.js';
export { type Random, random } from './random.js';
export { plainRecording, type Recording } from './recording/recording.js';
export type { BeamPlan, Effect, GainControl, Scenario, SideChannel, VisitPlan } from './scenario.js';
export { type SimulatedBeam, type Simulation, simulate } from './simulate.js';
export type { BeamTruth, TruthFile } from './truth/truthFile.js';
