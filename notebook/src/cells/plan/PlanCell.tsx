import type { PlanAnswer } from 'beamkeep/planning';
import { useEffect, useState } from 'preact/hooks';
import type { RuleSetTold } from '../../bench/planOf.js';
import { Asked } from '../../parts/Asked.js';
import { Choice } from '../../parts/Choice.js';
import { Drawing } from '../../parts/Drawing.js';
import { numberIn } from '../../parts/numberIn.js';
import { set } from '../../sheet/edits.js';
import type { Cell, Settings } from '../../sheet/sheet.js';
import { helper } from '../../state/helper.js';
import { edit } from '../../state/store.js';
import { counted, figure } from '../../words/numbers.js';
import { typeset } from '../../words/typeset.js';

/** How many beams a hall needs, where and how high, by a named rule set. */
export function PlanCell({ cell }: { cell: Cell<'plan'> }) {
  const { settings } = cell;
  const { length, width, height, roof, apex, rules } = settings;
  const change = (to: Partial<Settings['plan']>): void => edit((sheet) => set(sheet, cell, to), `${cell.id} plan`);
  const [ruleSets, setRuleSets] = useState<readonly RuleSetTold[]>([]);
  const [answer, setAnswer] = useState<PlanAnswer | string>('');
  useEffect(() => {
    void helper().ruleSets().then(setRuleSets);
  }, []);
  useEffect(() => {
    let outdated = false;
    const hall = { length: numberIn(length), width: numberIn(width), height: numberIn(height), ruleSet: rules };
    void helper()
      .plan(roof === 'pitched' ? { ...hall, roof: { shape: 'pitched', apex: numberIn(apex) } } : hall)
      .then(
        (plan) => !outdated && setAnswer(plan),
        (error: unknown) => !outdated && setAnswer((error as Error).message),
      );
    return () => {
      outdated = true;
    };
  }, [length, width, height, roof, apex, rules]);
  const ruleSet = ruleSets.find(({ id }) => id === rules);
  const field = (key: 'length' | 'width' | 'height' | 'apex', words: string) => (
    <label class="field">
      <span>{words} [m]</span>
      <input
        inputMode="decimal"
        size={6}
        value={settings[key]}
        onInput={(event) => change({ [key]: event.currentTarget.value })}
      />
    </label>
  );
  return (
    <>
      <div class="settings">
        {field('length', 'Length, along the beams')}
        {field('width', 'Width')}
        {field('height', roof === 'flat' ? 'Height' : 'Height of the eaves')}
        <Choice
          legend="Roof"
          options={[
            ['flat', 'flat'],
            ['pitched', 'pitched'],
          ]}
          value={roof}
          onChange={(to) => change({ roof: to })}
        />
        {roof === 'pitched' && field('apex', 'Height of the ridge')}
        <label class="field">
          <span>Rule set</span>
          <select value={rules} onChange={(event) => change({ rules: event.currentTarget.value })}>
            {ruleSets.map((each) => (
              <option key={each.id} value={each.id}>
                {named(each)}
              </option>
            ))}
          </select>
        </label>
      </div>
      <Asked
        of={[
          ['Length, along the beams', `${length} m`],
          ['width', `${width} m`],
          [roof === 'flat' ? 'height' : 'height of the eaves', `${height} m`],
          ['roof', roof],
          ['height of the ridge', roof === 'flat' ? '' : `${apex} m`],
          ['rule set', ruleSet ? named(ruleSet) : rules],
        ]}
      />
      {typeof answer === 'string' ? answer && <p class="trouble">{answer}</p> : <Laid answer={answer} />}
    </>
  );
}

const named = ({ title, country, edition }: RuleSetTold): string => `${title} (${country}, ${edition})`;

function Laid({ answer: { plan, drawings } }: { answer: PlanAnswer }) {
  const [first] = plan.rows;
  return (
    <>
      <p class="answer">
        {counted(plan.beams.length)} {plan.beams.length === 1 ? 'beam' : 'beams'} in {counted(plan.rows.length)}{' '}
        {plan.rows.length === 1 ? 'row' : 'rows'}, {figure(plan.betweenRows)} m apart, {figure(plan.toSide)} m from the
        side walls
        {first ? `, ${figure(first.height)} m above the floor and ${figure(first.belowCeiling)} m below the roof` : ''}.{' '}
        {plan.decides}
      </p>
      <div class="drawings">
        <Drawing
          svg={drawings.plan}
          label="The hall from above, with its beams and what each covers"
          name={['plan', 'from above']}
        />
        <Drawing
          svg={drawings.section}
          label="The hall in section, with the height of its beams"
          name={['plan', 'section']}
        />
      </div>
      {plan.warnings.length > 0 && (
        <ul class="warnings">
          {plan.warnings.map(({ words, clause }) => (
            <li key={words}>
              {typeset(words)}
              {clause && <span class="quiet"> ({clause})</span>}
            </li>
          ))}
        </ul>
      )}
      <details>
        <summary>Figures of the rule set, and where they come from</summary>
        <table>
          <tbody>
            {plan.ruleSet.figures.map(({ name, meaning, value, unit, source, clause, seen }) => (
              <tr key={name}>
                <th scope="row">{meaning}</th>
                <td>
                  {figure(value)} {unit}
                </td>
                <td class="quiet">
                  {source}
                  {clause && `, ${clause}`} ({seen})
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
      <p class="key">Left out: {typeset(plan.leftOut.join(' '))}</p>
    </>
  );
}
