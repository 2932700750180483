// Runs before the first paint: entries of the outline may start closed only where a script can open them.
document.documentElement.classList.add("with-script");
