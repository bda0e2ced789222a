// The course, in its order. A new lesson is one file like those beside this one, one line here and one in
// the contents list (pages/registry.ts); cuts, gauges and stopping are to follow.

import { lessonOf, type Lesson } from './lesson.js';
import { onePlateMore } from './one-plate-more.js';
import { reflux } from './reflux.js';
import { whatBoils } from './what-boils.js';
import { whyItStops } from './why-it-stops.js';

export const lessons: readonly Lesson[] = [
  lessonOf(whatBoils),
  lessonOf(onePlateMore),
  lessonOf(reflux),
  lessonOf(whyItStops),
];
