// A jar with no peg, in plain English: no dose, what to do, and that it went on the heap.

/** The sheet, and its steps as drawn. */
export const jarSheet = {
  verdict: 'No dose.',
  lead: 'Nobody knows what is in it, so it goes on no bed.',
  stepsHeading: 'What to do',
  steps: [
    'Outdoors, cap turned away from your face: open it a quarter and wait till it is quiet.',
    'Dip a strip and note the pH. Wear gloves.',
    'Smell it from arm’s length. Never taste it.',
    'Whatever they say, compost it: tip it on the heap in layers with dry leaves, away from ditches and wells.',
    'Write down here that it went. Rinse the jar on the heap and throw it out, or give it a tag.',
  ] as const,
  stepSource: 'Our caution, no source. Where local rules ask for more, they hold.',
  whyPh: 'A pH of 4.6 or below and a sour smell do not make it known: acid says nothing of what went in.',
  actHeading: 'It went on the heap',
  amount: 'About how much',
  amountHint: 'such as 0.5 L',
  heap: 'Which heap',
  smell: 'pH and smell, if you noted them',
  smellHint: 'such as pH 5, egg',
  act: 'It is on the heap: write it down',
  stillNeeded: 'Still to tell: about how much it was.',
  done: 'Written down: a jar without a peg went on the heap. Nothing of it is on any bed.',
  another: 'Another jar',
  swallowed: 'If anyone drank of it, call the poison line.',
  poisonLine: (line: string) => `If anyone drank of it, call the poison line: ${line}.`,
  alternatives: [
    'A jar held outdoors, its cap turned away.',
    'A strip dipped into the jar.',
    'A nose at arm’s length from the jar.',
    'The jar tipped onto a heap in layers.',
    'A pencil and a tag.',
  ] as const,
} as const;
