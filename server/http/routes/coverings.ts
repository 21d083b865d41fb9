import type { Context } from '../../services/context.ts';
import { changeCovering, closeCovering, planCovering, reopenCovering } from '../../services/coverings.ts';
import { readDay, writeNote } from '../../services/days.ts';
import { readEarlierDays, readJournal } from '../../services/journal.ts';
import { reportCsv } from '../../services/report-csv.ts';
import { readSaidOfCovering } from '../../services/said-of-covering.ts';
import { readClosingReport, readReportOfPhoto } from '../../services/report.ts';
import type { Handlers } from '../implement.ts';

export function coveringHandlers(context: Context): Handlers {
  const { read } = context.store;
  return {
    planCovering: ({ account, house, body: { id, ...facts } }) =>
      planCovering(context, account, { house, covering: id }, facts),
    listCoverings: async ({ house }) => ({ coverings: await read.coverings(house) }),
    changeCovering: ({ account, house, params, body }) =>
      changeCovering(context, account, { house, covering: params.covering }, body),
    closeCovering: ({ account, house, params, body }) =>
      closeCovering(context, account, { house, covering: params.covering }, body),
    reopenCovering: ({ account, house, params, body }) =>
      reopenCovering(context, account, { house, covering: params.covering }, body.reason),
    readCoveringLedger: async ({ house, params }) => ({
      entries: await readSaidOfCovering(context, house, params.covering),
    }),

    closingReport: async ({ house, req, res, query: { format, lang } }) => {
      const report = await readClosingReport(context, house);
      const wanted =
        format ?? (req.accepts(['application/json', 'text/csv']) === 'text/csv' ? 'csv' : 'json');
      res.setHeader('cache-control', 'no-store');
      if (wanted === 'json') return report;
      const name = `closing-report-${report.today}.csv`;
      res.setHeader('content-disposition', `attachment; filename="${name}"`);
      res.type('text/csv').send(reportCsv(report, lang, await read.zone(house)));
      return undefined;
    },

    reportOfPhoto: ({ house, params }) => readReportOfPhoto(context, house, params.photo),

    readJournal: ({ house }) => readJournal(context, house),
    listEarlierDays: ({ house, query: { before, limit } }) => readEarlierDays(context, house, before, limit),
    listDays: async ({ house }) => ({ days: await read.days(house, await read.zone(house)) }),
    readDay: ({ house, params }) => readDay(context, house, params.date),
    writeNote: async ({ account, house, params, body }) => {
      await writeNote(context, account, house, params.date, body.text);
      return readDay(context, house, params.date);
    },
  };
}
