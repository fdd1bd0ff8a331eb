#pragma once

// Parsed once for all test programs. No file may rely on it.

#include "core/precompiled.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
