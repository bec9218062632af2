import { shownPath } from './shown-path.ts';
import { systemReason } from './system-reason.ts';

/** Something that could not be written, worded for the person whose disk it is. */
export class Unwritten extends Error {
  override readonly name = 'Unwritten';

  /**
   * @param path of the file or folder that was to be there, whatever it is called until it is whole
   * @param code as the operating system names the reason, such as `ENOSPC`
   */
  constructor(path: string, code: string) {
    super(`${shownPath(path)} could not be written: ${systemReason(code)}. Nothing that was there has changed.`);
    delete this.stack; // where our code noticed is of no use to them
  }
}
