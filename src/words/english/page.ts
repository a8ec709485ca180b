import { pageBar } from './page-bar.ts';
import { pageNotices } from './page-notices.ts';
import { pageViews } from './page-views.ts';

/** What the page says round a job: a subject for each part of it. */
export const page = { bar: pageBar, notices: pageNotices, views: pageViews };
