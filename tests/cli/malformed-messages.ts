// biome-ignore lint/suspicious/noControlCharactersInRegex: they could steer a terminal
const CONTROL = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u2028-\u202e\u2066-\u2069]/;
const LONGEST_LINE = 400;

const BLOCK = /^[^\n]+:\n {2}read {5}[^\n]+\n {2}but {6}[^\n]+\n {2}instead {2}[^\n]+\n/;

/** The messages on standard error, or why it holds anything else. */
export function messagesIn(err: string): readonly string[] | string {
  if (err.startsWith('{')) {
    const { errors } = JSON.parse(err);
    if (!Array.isArray(errors)) return 'no list of errors';
    const lacking = errors.find(
      (each) => !['code', 'file', 'read', 'why', 'instead'].every((key) => each[key]),
    );
    return lacking === undefined
      ? errors.map((each) => JSON.stringify(each))
      : `lacking: ${JSON.stringify(lacking)}`;
  }
  if (CONTROL.test(err)) return 'a control character';
  if (err.split('\n').some((line) => line.length > LONGEST_LINE)) return 'a line too long to read';
  const found: string[] = [];
  let rest = err;
  for (let block = BLOCK.exec(rest)?.[0]; block !== undefined; block = BLOCK.exec(rest)?.[0]) {
    found.push(block);
    rest = rest.slice(block.length);
  }
  // Of many mistakes the first are told, and how many there are beyond.
  return rest === '' || /^and \d+ more\n$/.test(rest) ? found : `left over: ${rest.slice(0, 300)}`;
}
