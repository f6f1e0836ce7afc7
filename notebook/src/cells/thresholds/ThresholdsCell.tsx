import type { ThresholdsJson } from 'beamkeep/commissioning';
import type { Site } from 'beamkeep/site';
import { Scroll } from '../../parts/Scroll.js';
import type { Cell } from '../../sheet/sheet.js';
import { helper } from '../../state/helper.js';
import { figure } from '../../words/numbers.js';
import { NeedsSite } from '../NeedsSite.js';
import { useAnswer } from '../useAnswer.js';

type BeamTold = ThresholdsJson['beams'][number];

/** What the thresholds of each beam mean: in smoke, against standards, and under dirt. */
export function ThresholdsCell({ cell }: { cell: Cell<'thresholds'> }) {
  return <NeedsSite cell={cell.id}>{(site) => <Told site={site} />}</NeedsSite>;
}

function Told({ site }: { site: Site }) {
  const told = useAnswer(() => helper().thresholds(site), [site]);
  const minded = useAnswer(() => helper().cautions('thresholds'), []);
  if (told.is !== 'told') return null;
  return (
    <>
      {minded.is === 'told' &&
        minded.told.map(({ words }) => (
          <p class="trouble" key={words}>
            {words}
          </p>
        ))}
      {told.told.beams.map((beam) => (
        <BeamThresholds key={beam.id} beam={beam} />
      ))}
    </>
  );
}

const say = (value: number | 'infinite' | null): string =>
  value === null ? 'not known' : value === 'infinite' ? 'without end' : figure(value);

function BeamThresholds({ beam }: { beam: BeamTold }) {
  const { alarm, fault } = beam;
  return (
    <div class="threshold">
      <h3>Beam {beam.id}</h3>
      <p class="answer">
        {figure(alarm.percent)} % over {figure(alarm.path)} m of smoke is {say(alarm.units.decibels)} dB, or{' '}
        {say(alarm.units['decibels-per-metre'])} dB/m ({say(alarm.units['percent-per-foot'])} %/ft): if smoke filled the
        whole path, one could read a reflecting sign {say(alarm.smoke.reflectingSignMetres)} m away when it alarms.
        Blocked is {figure(fault.percent)} %, {say(fault.units.decibels)} dB.
      </p>
      <details>
        <summary>Under dirt, and against standards</summary>
        <table>
          <caption>What smoke must take for an alarm, when dirt has taken its part</caption>
          <thead>
            <tr>
              <th scope="col">dirt</th>
              <th scope="col">smoke</th>
              <th scope="col" />
            </tr>
          </thead>
          <tbody>
            {beam.dirt.map(({ dirt, smoke, ends }) => (
              <tr key={dirt}>
                <th scope="row">{figure(dirt)} %</th>
                <td>{figure(smoke)} %</td>
                <td class="quiet">
                  {ends === 'alarm' && 'dirt alone is an alarm'}
                  {ends === 'fault' && 'the compensation is used up: a fault'}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        <Scroll label={`Limits of standards for beam ${beam.id}`}>
          <table>
            <caption>What standards ask; from memory means: look it up before relying on it</caption>
            <thead>
              <tr>
                <th scope="col">asked</th>
                <th scope="col">limit</th>
                <th scope="col">here</th>
                <th scope="col">kept</th>
                <th scope="col">source</th>
              </tr>
            </thead>
            <tbody>
              {beam.limits.map(({ asks, limit, found, unit, kept, source, seen }) => (
                <tr key={`${asks} ${source}`}>
                  <th scope="row">{asks}</th>
                  <td>{limit === null ? 'not known' : `${figure(limit)} ${unit}`}</td>
                  <td>{found === null ? 'not said' : `${figure(found)} ${unit}`}</td>
                  <td>{kept}</td>
                  <td class="quiet">
                    {source} ({seen})
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroll>
      </details>
      <details>
        <summary>Against separation: the table for the wall</summary>
        <table>
          <caption>
            Smoke that alarms, if it filled the whole path of a beam that is {beam.layout}: the same percentage is less
            and less smoke as the beam grows longer
          </caption>
          <thead>
            <tr>
              <th scope="col">separation</th>
              {beam.table.thresholds.map((percent) => (
                <th scope="col" key={percent}>
                  {figure(percent)} %
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {beam.table.rows.map(({ separation, cells }) => (
              <tr key={separation}>
                <th scope="row">{figure(separation)} m</th>
                {cells.map(({ percent, units }) => (
                  <td key={percent}>
                    {say(units['decibels-per-metre'])} dB/m, {say(units['percent-per-foot'])} %/ft
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </div>
  );
}
