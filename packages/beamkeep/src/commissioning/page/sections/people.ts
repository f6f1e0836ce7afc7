import type { CommissioningRecord, ToldOut } from '../../record/commissioningRecord.js';
import { wallTime } from '../../words/wallTime.js';
import { type Content, html, type Markup } from '../markup.js';
import { list, missing, table } from '../parts.js';

/** A text that people wrote; missing where they wrote none. */
const written = (text: string | null): Content =>
  text ? html`<span class="written">${text}</span>` : missing('not written down');

const tellings = (told: readonly ToldOut[]) =>
  list(
    told.map(({ who, time }) => [written(who), ', ', written(time)]),
    'nobody written down',
  );

/** Who did the work, and how the impairment was kept. */
export function peopleSection({ people, impairment, log, site }: CommissioningRecord): Markup {
  return html`
<h2>People</h2>
${
  people.length === 0
    ? html`<p>${missing('nobody written down')}</p>`
    : table(
        ['part', 'name', 'licence'],
        people.map(({ role, name, licence }) => [written(role), written(name), licence ?? missing('not given')]),
      )
}
<h2>Impairment</h2>
${
  impairment === null
    ? html`<p>${missing('nothing written down: when the system was out of service, and who was told')}</p>`
    : html`${table(
        ['what', 'when, and by whom'],
        [
          ['out of service from', written(impairment.from)],
          ['until', written(impairment.until)],
          [
            'fire watch',
            impairment.fireWatch
              ? [
                  written(impairment.fireWatch.by),
                  ', ',
                  written(impairment.fireWatch.from),
                  ' to ',
                  impairment.fireWatch.until ?? missing('an end not written down'),
                ]
              : missing('not written down'),
          ],
          [
            'returned to service',
            impairment.returned
              ? [written(impairment.returned.time), ', ', written(impairment.returned.by)]
              : missing('not written down'),
          ],
        ],
      )}
<h3>Told that the system was out of service</h3>${tellings(impairment.told)}
<h3>Told that it is back in service</h3>${
        impairment.returned ? tellings(impairment.returned.told) : html`<p>${missing('not written down')}</p>`
      }`
}
<h2>Received signal kept with this record</h2>
${
  log === null
    ? html`<p>${missing('no log')}</p>`
    : html`<p>From ${wallTime(log.from, site.timeZone)} to ${wallTime(log.to, site.timeZone)}: ${log.lines} lines, ${
        log.dropped === 0 ? 'none' : log.dropped
      } dropped.</p>`
}
`;
}
