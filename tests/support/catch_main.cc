// main() of the test programs: the library's own.
#define CATCH_CONFIG_MAIN
#include "support/catch.h"
