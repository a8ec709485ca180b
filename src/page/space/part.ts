import { stageOn } from './scene.ts';

// The part of the page that is run only when somebody asks for it hands over what it has here.
globalThis.copeleafSpace = { stageOn };
