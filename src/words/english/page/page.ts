import { pageBar } from './bar.ts';
import { pageForm } from './form.ts';
import { pageMeasures } from './measures.ts';
import { pageNotices } from './notices.ts';
import { pageViews } from './views.ts';

/** What the page says round a job: a subject for each part of it. */
export const pageWords = {
  bar: pageBar,
  form: pageForm,
  measures: pageMeasures,
  notices: pageNotices,
  views: pageViews,
};
