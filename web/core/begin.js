// Starts the core while the rest of the page is still being read.

import { startDoor } from "./door.js";

startDoor();
