// What a page may ask of the solver, as plain data, and what comes back. One question, one answer.

import {
  activityModel,
  azeotrope,
  InputError,
  moleFractionFromStrength,
  solve,
  stagesAtTotalReflux,
  strengthFromMoleFraction,
  vapourOnSlice,
  type ActivityName,
  type CurveSlice,
  type EthanolWater,
  type InputFault,
  type Limit,
  type PlainSolution,
  type SimplifiedProblem,
  type EnergyProblem,
  type PlainEnergySolution,
} from '#lib/index.js';

/** A run in time. */
export interface RunQuestion {
  readonly kind: 'run';
  readonly problem: SimplifiedProblem;
}
/** What boils at what, at one pressure. */
export interface EquilibriumQuestion {
  readonly kind: 'equilibrium';
  readonly activity: ActivityName;
  readonly pressure_Pa: number;
}
/** Ideal stages at total reflux from a kettle of one strength. */
export interface StagesQuestion {
  readonly kind: 'stages';
  readonly activity: ActivityName;
  readonly pressure_Pa: number;
  /** % vol / 100 of the kettle. */
  readonly fromStrength: number;
  /** % vol / 100 to be reached. */
  readonly toStrengths: readonly number[];
}
/** The azeotrope of the default model at several pressures. */
export interface DriftQuestion {
  readonly kind: 'drift';
  readonly pressures_Pa: readonly number[];
  /** Pressures without and with an azeotrope, to look between for its end; null not to look. */
  readonly endBetween_Pa: readonly [number, number] | null;
}
/** A run of a still as it stands: energy, doublers, plates or packing, condensers. */
export interface TrainQuestion {
  readonly kind: 'train';
  readonly problem: EnergyProblem;
  /** Whether the limits it passes are wanted too. */
  readonly limits?: true;
}
export type Question = RunQuestion | EquilibriumQuestion | StagesQuestion | DriftQuestion | TrainQuestion;

export interface EquilibriumAnswer {
  readonly kind: 'equilibrium';
  /** Name of the model, and where its parameters come from. */
  readonly model: { readonly name: string; readonly source: string };
  readonly slice: CurveSlice;
  /** Null where the model has none at this pressure. */
  readonly azeotrope: {
    readonly moleFraction: number;
    /** % vol / 100 at 20 °C. */
    readonly strength: number;
    readonly temperature_K: number;
  } | null;
}
export interface StagesAnswer {
  readonly kind: 'stages';
  /** Ideal stages, the kettle counted; null where no number of them gets there. */
  readonly stages: readonly (number | null)[];
  /** % vol / 100 of the vapour of each stage, the kettle first; forty of them. */
  readonly ladder: readonly number[];
}
export interface RunAnswer {
  readonly kind: 'run';
  readonly solution: PlainSolution;
}
/** The azeotrope at one pressure with its standard errors; null where there is none. */
export interface AzeotropeAt {
  readonly pressure_Pa: number;
  readonly azeotrope: {
    readonly moleFraction: number;
    /** % vol / 100 at 20 °C. */
    readonly strength: number;
    readonly temperature_K: number;
    readonly moleFractionError: number;
    readonly strengthError: number;
    readonly temperatureError_K: number;
  } | null;
  /** Whether it boils outside the temperatures the model was fitted to. */
  readonly extrapolated: boolean;
}
export interface DriftAnswer {
  readonly kind: 'drift';
  readonly points: readonly AzeotropeAt[];
  /** Below it there is no azeotrope. */
  readonly end_Pa: number | null;
  /** Temperatures the model was fitted to, K. */
  readonly range_K: readonly [number, number];
}
export interface TrainAnswer {
  readonly kind: 'train';
  readonly solution: PlainEnergySolution;
  /** Empty where they were not asked for. */
  readonly limits: readonly Limit[];
}
export type Answer = RunAnswer | EquilibriumAnswer | StagesAnswer | DriftAnswer | TrainAnswer;

/** The answer that belongs to a question. */
export type AnswerTo<Asked extends Question> = Extract<Answer, { readonly kind: Asked['kind'] }>;

/** All answers, or the faults of a question that cannot be answered. */
export type Reply =
  | { readonly kind: 'answered'; readonly answers: readonly Answer[] }
  | { readonly kind: 'refused'; readonly faults: readonly InputFault[] };

const rungs = 40;

/** What is loaded only when it is first asked for: a module of the worker each. */
export interface LateAnswers {
  readonly drift: (question: DriftQuestion) => DriftAnswer;
  readonly train: (question: TrainQuestion, system: EthanolWater) => TrainAnswer;
}
type LateName = keyof LateAnswers;
const lateNames: readonly string[] = ['drift', 'train'] satisfies LateName[];

/** Which of them these questions need. */
export function lateNeeded(questions: readonly Question[]): readonly LateName[] {
  return [...new Set(questions.map(({ kind }) => kind))].filter((kind): kind is LateName => lateNames.includes(kind));
}

/** A solver that answers lists of questions; `late` what has been loaded of them. */
export function createSolver(
  system: EthanolWater,
  late: Partial<LateAnswers> = {},
): (questions: readonly Question[]) => Reply {
  return (questions) => {
    try {
      return { kind: 'answered', answers: questions.map((question) => answerTo(question, system, late)) };
    } catch (error) {
      if (error instanceof InputError) return { kind: 'refused', faults: error.faults };
      throw error;
    }
  };
}

function answerTo(question: Question, system: EthanolWater, late: Partial<LateAnswers>): Answer {
  switch (question.kind) {
    case 'run': {
      const { problem } = question;
      return { kind: 'run', solution: solve(problem, system).plain() };
    }
    case 'equilibrium':
      return equilibrium(question, system);
    case 'stages':
      return stages(question, system);
    case 'drift':
      if (late.drift === undefined) throw new Error('drift.ts has not been loaded');
      return late.drift(question);
    case 'train':
      if (late.train === undefined) throw new Error('train.ts has not been loaded');
      return late.train(question, system);
  }
}

function equilibrium({ activity, pressure_Pa }: EquilibriumQuestion, system: EthanolWater): EquilibriumAnswer {
  const model = activityModel(activity);
  const found = azeotrope(pressure_Pa, model);
  return {
    kind: 'equilibrium',
    model: { name: model.name, source: model.source },
    slice: system.curve(activity).at(pressure_Pa),
    azeotrope: found.found
      ? {
          moleFraction: found.moleFraction,
          strength: strengthFromMoleFraction(found.moleFraction),
          temperature_K: found.temperature_K,
        }
      : null,
  };
}

function stages(question: StagesQuestion, system: EthanolWater): StagesAnswer {
  const slice = system.curve(question.activity).at(question.pressure_Pa);
  const from = moleFractionFromStrength(question.fromStrength);
  const counts = question.toStrengths.map((strength) => {
    const count = stagesAtTotalReflux(slice, from, Math.max(from, moleFractionFromStrength(strength)));
    return count.found ? count.stages : null;
  });
  const ladder: number[] = [];
  let liquid = from;
  while (ladder.length < rungs) {
    liquid = Math.min(1, vapourOnSlice(slice, liquid));
    ladder.push(strengthFromMoleFraction(liquid));
  }
  return { kind: 'stages', stages: counts, ladder };
}
