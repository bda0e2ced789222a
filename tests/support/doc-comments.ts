// Reads the doc comments of everything the library exports. The shape they must have: one sentence,
// `Equation:` where numbers go in or come out, an @param for each argument and @returns with [unit] or basis where it is a number, @example with
// its printed result, `Source:`. A type needs only its sentence, a constant its sentence and source.

import { join } from 'node:path';
import ts from 'typescript';
import { root } from './tree.js';

/** One name behind the public door, as the compiler sees it. */
export interface PublicName {
  readonly name: string;
  readonly kind: 'function' | 'class' | 'constant' | 'type';
  /** Text of the doc comment without stars, '' where there is none. */
  readonly comment: string;
  readonly parameters: readonly { readonly name: string; readonly numeric: boolean; readonly optional: boolean }[];
  readonly result: 'number' | 'nothing' | 'other';
  /** Names of fields, for a type; of public methods without a doc comment, for a class. */
  readonly members: readonly string[];
}

/** All names that a door of the library exports. */
export function publicNames(door = 'lib/index.ts'): PublicName[] {
  const index = join(root, door);
  const config = ts.getParsedCommandLineOfConfigFile(join(root, 'lib', 'tsconfig.json'), undefined, {
    ...ts.sys,
    onUnRecoverableConfigFileDiagnostic: () => undefined,
  });
  const program = ts.createProgram([index], { ...config?.options, noEmit: true });
  const checker = program.getTypeChecker();
  const file = program.getSourceFile(index);
  const shown = file && checker.getSymbolAtLocation(file);
  if (shown === undefined) throw new Error(`${door} exports nothing`);
  return checker.getExportsOfModule(shown).map((symbol) => {
    const real = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
    return describe(checker, symbol.name, real);
  });
}

/** What a doc comment lacks, in words. */
export function faultsOf(named: PublicName): string[] {
  const { comment, kind, parameters, result, members } = named;
  if (comment === '') return ['has no doc comment'];
  const faults: string[] = [];
  const need = (there: boolean, fault: string): void => {
    if (!there) faults.push(fault);
  };
  const sentence = (/^[\s\S]*?(?=\n\s*\n|\n?\s*(?:Equation:|Source:|@)|$)/.exec(comment)?.[0] ?? '').trim();
  need(/\S+ .*[.!?]$/s.test(sentence), 'does not open with a sentence');
  if (kind === 'type') return faults;
  need(/\bSource: \S+/.test(comment), 'has no Source:');
  if (kind === 'constant') return faults;
  need(examplesOf(comment).length > 0, 'has no @example of the form `call(args) // → result`');
  if (kind === 'class') {
    need(members.length === 0, `has methods without a doc comment: ${members.join(', ')}`);
    return faults;
  }
  // An equation is asked of physics: where a number with a unit goes in or comes out.
  if (result === 'number' || parameters.some(({ numeric }) => numeric)) {
    need(/^Equation: \S+/m.test(comment), 'has no Equation:');
  }
  for (const { name, numeric } of parameters) {
    const text = tag(comment, `param ${name}`);
    need(text !== undefined, `has no @param ${name}`);
    if (text !== undefined && numeric) need(unit.test(text), `gives no [unit] for ${name}`);
  }
  for (const [, name = ''] of comment.matchAll(/^@param (\w+)/gm)) {
    need(
      parameters.some((parameter) => parameter.name === name),
      `documents ${name}, which is no argument`,
    );
  }
  const returns = tag(comment, 'returns');
  if (result !== 'nothing') need(returns !== undefined, 'has no @returns');
  if (result === 'number' && returns !== undefined) need(unit.test(returns), 'gives no [unit] for what it returns');
  return faults;
}

/** The examples in a doc comment: what to evaluate and what it must print. */
export function examplesOf(comment: string): { call: string; printed: string }[] {
  return [...comment.matchAll(/^@example (.+?) \/\/ → (.+)$/gm)].map(([, call = '', printed = '']) => ({
    call,
    printed: printed.trim(),
  }));
}

/** Whether a value is what the example prints: a number to half a unit of its last printed digit, else exactly. */
export function agrees(value: unknown, printed: string): boolean {
  const number = /^[-−]?\d+(?:\.(\d+))?(?:e([-+]?\d+))?(?=[ ,]|$)/.exec(printed);
  if (number === null) return String(value) === printed.replace(/^'(.*)'$/s, '$1');
  const lastDigit = 10 ** (Number(number[2] ?? 0) - (number[1]?.length ?? 0));
  const difference = Math.abs(Number(value) - Number(number[0].replace('−', '-')));
  return typeof value === 'number' && difference <= 0.5000001 * lastDigit;
}

/** A unit in brackets or, for a number without one, the word that says what it is a share or a count of. */
const unit =
  /\[[^\]]+\]|\b(mole fraction|mass fraction|volume fraction|strength|proof|share|ratio|relative volatility|efficiency|number of)\b/i;

function tag(comment: string, name: string): string | undefined {
  return new RegExp(`^@${name}\\b([\\s\\S]*?)(?=^@|^Source:|^Equation:|(?![\\s\\S]))`, 'm').exec(comment)?.[1];
}

function describe(checker: ts.TypeChecker, name: string, symbol: ts.Symbol): PublicName {
  const declarations = symbol.declarations ?? [];
  const comments = declarations.map(commentOf).filter((comment) => comment !== '');
  const base = { name, comment: comments[0] ?? '', parameters: [], result: 'other' as const, members: [] };
  const declaration = symbol.valueDeclaration;
  if (declaration === undefined) {
    const fields = checker.getPropertiesOfType(checker.getDeclaredTypeOfSymbol(symbol));
    return { ...base, kind: 'type', members: fields.map((field) => field.name) };
  }
  if (ts.isClassDeclaration(declaration)) {
    const bare = declaration.members.filter((member) => isPublicMethod(member) && commentOf(member) === '');
    return { ...base, kind: 'class', members: bare.map((member) => member.name?.getText() ?? '') };
  }
  const signature = checker.getTypeOfSymbolAtLocation(symbol, declaration).getCallSignatures()[0];
  if (signature === undefined) return { ...base, kind: 'constant' };
  const returned = signature.getReturnType();
  return {
    ...base,
    kind: 'function',
    parameters: signature.getParameters().map((parameter) => ({
      name: parameter.name,
      numeric: isNumeric(checker, checker.getTypeOfSymbolAtLocation(parameter, declaration)),
      optional: isOptional(parameter),
    })),
    result: isNumeric(checker, returned) ? 'number' : returned.flags & ts.TypeFlags.Void ? 'nothing' : 'other',
  };
}

function isPublicMethod(member: ts.ClassElement): boolean {
  if (!ts.isMethodDeclaration(member) || ts.isPrivateIdentifier(member.name)) return false;
  return !(ts.getCombinedModifierFlags(member) & (ts.ModifierFlags.Private | ts.ModifierFlags.Protected));
}

/** A number, a flavoured number, one that may be missing, or a list of them. */
function isNumeric(checker: ts.TypeChecker, type: ts.Type): boolean {
  if (type.flags & ts.TypeFlags.NumberLike) return true;
  if (type.isUnionOrIntersection()) return type.types.some((part) => isNumeric(checker, part));
  if (type.flags & ts.TypeFlags.StringLike) return false;
  const element = type.flags & ts.TypeFlags.Object ? checker.getIndexTypeOfType(type, ts.IndexKind.Number) : undefined;
  return element !== undefined && isNumeric(checker, element);
}

function commentOf(declaration: ts.Node): string {
  const comment = ts.getJSDocCommentsAndTags(declaration).filter(ts.isJSDoc).at(-1);
  return (comment?.getText() ?? '')
    .replace(/^\/\*\*/, '')
    .replace(/\*\/$/, '')
    .replace(/^[ \t]*\*[ \t]?/gm, '')
    .trim();
}

/** Whether an argument may be left out. */
function isOptional(parameter: ts.Symbol): boolean {
  const declaration = parameter.valueDeclaration;
  if (declaration === undefined || !ts.isParameter(declaration)) return false;
  return declaration.questionToken !== undefined || declaration.initializer !== undefined;
}
