#pragma once

// Breaks the rule three times: a later folder, a way round, a name without its folder.

#include <string>
#include "../html/late.h"
#include "early.h"
#include "html/late.h"
