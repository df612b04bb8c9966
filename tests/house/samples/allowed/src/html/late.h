#pragma once

#include "model/early.h"
#include "base/anything.h"
