// The public door: named re-exports, nothing else.
export { InputError, type InputFault, type Outcome } from './errors.js';
