import { pageBar } from './page-bar.ts';
import { pageForm } from './page-form.ts';
import { pageMeasures } from './page-measures.ts';
import { pageNotices } from './page-notices.ts';
import { pageViews } from './page-views.ts';

/** What the page says round a job: a subject for each part of it. */
export const page = {
  bar: pageBar,
  form: pageForm,
  measures: pageMeasures,
  notices: pageNotices,
  views: pageViews,
};
