import type { Kind } from '../sheet/sheet.js';
import { AimCell } from './aim/AimCell.js';
import { CautionsCell } from './cautions/CautionsCell.js';
import type { CellView } from './cellView.js';
import { CompareCell } from './compare/CompareCell.js';
import { CoveredCell } from './covered/CoveredCell.js';
import { EventsCell } from './events/EventsCell.js';
import { FindingsCell } from './findings/FindingsCell.js';
import { FoldCell } from './fold/FoldCell.js';
import { LessonCell } from './lesson/LessonCell.js';
import { LogCell } from './log/LogCell.js';
import { MarginCell } from './margin/MarginCell.js';
import { NoteCell } from './note/NoteCell.js';
import { PlanCell } from './plan/PlanCell.js';
import { ProofCell } from './proof/ProofCell.js';
import { RecordCell } from './record/RecordCell.js';
import { SignalCell } from './signal/SignalCell.js';
import { SpectrumCell } from './spectrum/SpectrumCell.js';
import { ThresholdsCell } from './thresholds/ThresholdsCell.js';
import { TradeOffCell } from './tradeoff/TradeOffCell.js';
import { UnitsCell } from './units/UnitsCell.js';
import { WhyCell } from './why/WhyCell.js';

/** Every kind of cell, in the order in which a worksheet usually has them. */
export const cellViews: { readonly [K in Kind]: CellView<K> } = {
  log: { question: 'What does the log hold?', about: 'a log and its site', View: LogCell },
  signal: { question: 'What did the beams receive?', about: 'the received signal of every beam', View: SignalCell },
  findings: { question: 'What took the light?', about: 'what the log says, and why', View: FindingsCell },
  why: { question: 'Why then?', about: 'what happened at a time of day, or at a moment', View: WhyCell },
  events: { question: 'What did the panel say?', about: 'the panel’s list beside the log', View: EventsCell },
  margin: {
    question: 'How long until the margin is gone?',
    about: 'what is left of the margin, and until when',
    View: MarginCell,
  },
  fold: { question: 'What returns with the hour?', about: 'the log folded at midnight', View: FoldCell },
  spectrum: {
    question: 'Which periods return?',
    about: 'periods that return in the stretch in sight',
    View: SpectrumCell,
  },
  aim: { question: 'Is it aimed at the peak?', about: 'an aim scan', View: AimCell },
  covered: { question: 'What comes back when it is covered?', about: 'a covered test', View: CoveredCell },
  thresholds: {
    question: 'What do the thresholds mean?',
    about: 'thresholds in smoke, under dirt, against standards',
    View: ThresholdsCell,
  },
  compare: {
    question: 'What did the visit change?',
    about: 'two logs compared, before and after a visit',
    View: CompareCell,
  },
  tradeoff: {
    question: 'What does each setting cost?',
    about: 'threshold and delay: time to alarm against nuisance',
    View: TradeOffCell,
  },
  proof: { question: 'Did the tests show what they had to?', about: 'a proof, step by step', View: ProofCell },
  record: { question: 'What is handed over?', about: 'the commissioning record', View: RecordCell },
  plan: { question: 'How many beams does a hall need?', about: 'a layout of beams by a rule set', View: PlanCell },
  lesson: { question: 'What if?', about: 'a lesson with sliders', View: LessonCell },
  note: { question: 'Note', about: 'a note of your own', View: NoteCell },
  units: { question: 'How much smoke is that?', about: 'every unit of obscuration', View: UnitsCell },
  cautions: {
    question: 'What must be borne in mind?',
    about: 'cautions, and what was taken for granted',
    View: CautionsCell,
  },
};
