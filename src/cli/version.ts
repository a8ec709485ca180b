import { version } from '../../package.json' with { type: 'json' };

export const VERSION: string = version;
