// <kp-answer> and <kp-own-words> under hands: numbers with units and commas, replies, the answer after three
// misses; words told at every rest and kept.

import axe from 'axe-core';
import { describe, expect, it } from 'vitest';
import '../../../../explorer/styles/tokens.css';
import '../../../../explorer/styles/page.css';
import '../../../../explorer/styles/words.css';
import '../../../../explorer/styles/course.css';
import '../../../../explorer/components/answer/kp-answer.js';
import type { AnswerBlank } from '../../../../explorer/components/answer/kp-answer.js';
import { judged, type AskedNumber } from '../../../../explorer/entries/question/judge.js';
import '../../../../explorer/entries/own-words/kp-own-words.js';
import { strengthReadIn } from '../../../../explorer/entries/question/readable.js';
import { unitSystems } from '../../../../explorer/text/unit-systems.js';

const asked: AskedNumber = {
  answer: 0.76,
  tolerance: { absolute: 0.02 },
  reached: (given) => `${(100 * given).toFixed(1)} rises from elsewhere.`,
  answerWords: 'It is 76.0 % vol.',
  hints: ['Look along the foot.', 'At 25 it is 73.6, at 35 it is 77.7.'],
};

describe('an answer', () => {
  it('is judged when it is sent, with its unit and a decimal comma', async () => {
    const { answer, told } = await question();
    await write(answer, '76,5 % vol');
    expect(reply(answer)).toBe('Yes. It is 76.0 % vol.');
    expect(told).toEqual([{ text: '76,5 % vol', met: true }]);
  });

  it('that misses is told what it comes to, with a hint, then one with numbers, then offered the answer', async () => {
    const { answer, told } = await question();
    await write(answer, '60');
    expect(reply(answer)).toBe('Not yet. 60.0 rises from elsewhere. Look along the foot.');
    await write(answer, '65');
    expect(reply(answer)).toBe('Not yet. 65.0 rises from elsewhere. At 25 it is 73.6, at 35 it is 77.7.');
    expect(shows(answer)).toBeUndefined();
    await write(answer, '90');
    shows(answer)!.click();
    await answer.updateComplete;
    expect(reply(answer)).toBe('It is 76.0 % vol.');
    expect(told.map(({ met }) => met)).toEqual([false, false, false]);
  });

  it('that is no number is asked for again and counts as no attempt', async () => {
    const { answer, told } = await question();
    for (const [text, says] of [
      ['', 'Write a number first.'],
      ['strong', 'no number'],
      ['7 kPa', 'unit does not fit'],
    ] as const) {
      await write(answer, text);
      expect(reply(answer)).toContain(says);
    }
    expect(told).toEqual([]);
    await write(answer, '60');
    expect(reply(answer)).toContain('Look along the foot.');
  });

  it('loses its reply when the question becomes another', async () => {
    const { answer } = await question();
    await write(answer, '60');
    answer.subject = 'another';
    await answer.updateComplete;
    expect(reply(answer)).toBe('');
  });

  it('leaves axe nothing to complain of', async () => {
    const { answer } = await question();
    await write(answer, '60');
    expect((await axe.run(answer)).violations.map(({ id }) => id)).toEqual([]);
  });
});

describe('own words', () => {
  it('are told after a rest and when they are left, and can then be compared with ours', async () => {
    const words = document.createElement('kp-own-words');
    Object.assign(words, { prompt: 'What do you tell them?', ours: 'That it costs.' });
    const told: string[] = [];
    words.addEventListener('kp-own-words', ({ detail }) => told.push(detail.text));
    document.body.append(words);
    await words.updateComplete;
    expect(words.textContent).not.toContain('That it costs.');
    expect(words.querySelector('button')).toBeNull();
    const area = words.querySelector('textarea')!;
    expect(area.labels[0]!.textContent).toBe('What do you tell them?');
    for (const text of ['It', 'It costs hours.']) {
      area.value = text;
      area.dispatchEvent(new InputEvent('input', { bubbles: true }));
    }
    area.dispatchEvent(new Event('change', { bubbles: true }));
    expect(told).toEqual(['It costs hours.']);
    await words.updateComplete;
    words.querySelector('button')!.click();
    await words.updateComplete;
    expect(words.textContent).toContain('That it costs.');
    expect((await axe.run(words)).violations.map(({ id }) => id)).toEqual([]);
  });
});

async function question(): Promise<{ answer: AnswerBlank; told: { text: string; met: boolean }[] }> {
  const answer = document.createElement('kp-answer');
  Object.assign(answer, {
    lead: 'What rises holds',
    tail: '% vol.',
    label: 'What rises holds … % vol.',
    read: strengthReadIn(unitSystems.metric),
    judge: (given: number, attempt: number) => judged(given, asked, attempt),
    answerWords: asked.answerWords,
    subject: 'one',
  });
  const told: { text: string; met: boolean }[] = [];
  answer.addEventListener('kp-answered', ({ detail }) => told.push(detail));
  const main = document.createElement('main');
  main.append(answer);
  document.body.append(main);
  await answer.updateComplete;
  return { answer, told };
}

async function write(answer: AnswerBlank, text: string): Promise<void> {
  answer.querySelector('input')!.value = text;
  answer.querySelector('form')!.requestSubmit();
  await answer.updateComplete;
}

function reply(answer: AnswerBlank): string {
  return answer.querySelector('.reply')!.textContent;
}

function shows(answer: AnswerBlank): HTMLButtonElement | undefined {
  return [...answer.querySelectorAll('button')].find((button) => button.textContent.includes('Show the answer'));
}
