// What this device's clock says, as the texts that a record and the core take. No sum is needed for that.

const MONTHS = ["01", "02", "03", "04", "05", "06", "07", "08", "09", "10", "11", "12"];
const TWO = (number) => `${number}`.padStart(2, "0");
const BETWEEN = /[-:]|\.\d+/g;

const date = (now) => `${now.getFullYear()}-${MONTHS.at(now.getMonth())}-${TWO(now.getDate())}`;
const minute = (now) => `${date(now)}T${TWO(now.getHours())}:${TWO(now.getMinutes())}`;

/** Today on this device, as "YYYY-MM-DD". */
export const today = () => date(new Date());

/** Now on this device, as "2026-11-24T09:30". */
export const nowToMinute = () => minute(new Date());

/** Now on this device, as "2026-11-24T09:30:12". */
export function nowToSecond() {
  const now = new Date();
  return `${minute(now)}:${TWO(now.getSeconds())}`;
}

/** Now the world over, as "20261124T093012Z". */
export const stamp = () => new Date().toISOString().replace(BETWEEN, "");
