#pragma once

#include "base/anything.h"
#include "model/early.h"
